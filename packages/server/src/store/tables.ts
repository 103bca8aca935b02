import type { Entry, Envelope } from '@combside/record/entry';
import type { StateBase } from '@combside/record/states';
import type { Summary } from '@combside/record/summary';
import type { ColumnType, Generated } from 'kysely';

type Moment = ColumnType<Date, string, string>;
type MomentOrNull = ColumnType<Date | null, string | null, string | null>;
/** Written as JSON text, read as the value. */
type Json<T> = ColumnType<T, string, string>;

/** The tables of `migrations/`, as Kysely sees them. Names carry the schema: `combside.entries`. */
export interface Tables {
  'combside.entries': {
    hash: string;
    id: string;
    device: string;
    seq: number;
    kind: string;
    version: number;
    about_type: string;
    about_id: string;
    by: string;
    at: MomentOrNull;
    clock: string;
    envelope: Json<Envelope>;
    body: ColumnType<Entry['body'], string | null, string | null>;
    salt: string | null;
    received_at: MomentOrNull;
    refused: string | null;
  };
  'combside.heads': { device: string; seq: number; hash: string };
  'combside.office_clock': { one: Generated<boolean>; reading: string };
  'combside.placements': {
    scope: string;
    position: number;
    hash: string;
    digest: string;
    /** `bigint`, read as a number: it stays far below 2^53. */
    arrival: Generated<number>;
  };
  'combside.memberships': { entity_type: string; entity_id: string; scope: string };
  'combside.follows': { child_type: string; child_id: string; parent_type: string; parent_id: string };
  'combside.states': {
    entity_type: string;
    entity_id: string;
    fold_version: number;
    state: Json<StateBase>;
    summary: Json<Summary>;
    district: string | null;
    keeper: string | null;
    apiary: string | null;
    inspector: string | null;
    other_apiary: string | null;
    merged_into: string | null;
    name: string | null;
    search: string | null;
    unsettled: Generated<boolean>;
    place: ColumnType<{ x: number; y: number } | null, string | null, string | null>;
    happened_at: MomentOrNull;
    last_result: string | null;
  };
  'combside.examined': {
    examination: string;
    colony: string;
    visit: string;
    apiary: string;
    observed_at: MomentOrNull;
    depth: string;
    hive_state: string;
    frames_seen: number;
    frames_held: number;
    result: string | null;
    suspected: string[];
    basis: string | null;
    finds: string[];
  };
  'combside.visit_colonies': { visit: string; colony: string; result: string | null };
  'combside.checkpoints': { made_at: Moment; signed: Json<object> };
  'combside.photographs': {
    hash: string;
    bytes: number;
    media_type: string;
    uploaded_by: string;
    received_at: Moment;
  };
  'combside.comb_readings': {
    photograph: string;
    reader_version: number;
    state: 'waiting' | 'reading' | 'read' | 'refused' | 'failed';
    asked_at: Moment;
    begun_until: MomentOrNull;
    attempts: Generated<number>;
    finished_at: MomentOrNull;
    reasons: Generated<string[]>;
    part: Json<object | null> | null;
  };
  'combside.comb_photographs': {
    colony: string;
    hash: string;
    visit: string;
    apiary: string;
    taken_at: Moment;
    caption: string;
    accepted: boolean | null;
  };
  'combside.photograph_references': { hash: string; entity_type: string; entity_id: string };
  'combside.photograph_uploads': {
    id: string;
    hash: string;
    bytes: number;
    media_type: string;
    person: string;
    begun_at: Moment;
  };
  'combside.people': {
    person: string;
    name: string;
    role: 'inspector' | 'office' | 'server';
    account: string | null;
    active: boolean;
  };
  'combside.districts': { district: string; invented: boolean };
  'combside.grants': { person: string; district: string; granted_at: Moment };
}
