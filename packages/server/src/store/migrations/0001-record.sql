-- The record, the states folded from it, and who may see which part.
--
-- Envelopes, bodies and states are `json` and not `jsonb`: an entry must come back with every character it was signed
-- with, and jsonb takes neither U+0000 nor a lone surrogate. Whatever is searched stands in a column of its own.

create table combside.entries (
  -- SHA-256 of the envelope without its signature: what the next entry of the device names as `prev`.
  hash text primary key,
  -- Unique among entries that count: a refused one may come back sealed anew under the same identifier.
  id uuid not null,
  device uuid not null,
  seq bigint not null,
  kind text not null,
  version bigint not null,
  about_type text not null,
  about_id uuid not null,
  "by" uuid not null,
  -- Null where the text is no moment (month 13); the envelope keeps what was written.
  at timestamptz,
  clock text collate "C" not null,
  envelope json not null,
  -- Null together with the salt where an erasure entry says why.
  body json,
  salt text,
  received_at timestamptz,
  -- Why it does not count, or null. A refused entry keeps its place in the chain and is seen by no fold.
  refused text,
  unique (device, seq)
);
create unique index entries_id on combside.entries (id) where refused is null;
create index entries_about on combside.entries (about_type, about_id) where refused is null;
create index entries_refused on combside.entries (received_at) where refused is not null;

-- The newest link of every chain.
create table combside.heads (
  device uuid primary key,
  seq bigint not null,
  hash text not null
);

-- The newest hybrid clock reading of the office.
create table combside.office_clock (
  one boolean primary key default true check (one),
  reading text not null
);

-- What belongs to which scope. Positions of a scope run 1, 2, 3... in commit order: they are given while the writer
-- holds the office's lock, so a reader who has seen position n never finds a new entry at n or below. `arrival` runs
-- over all scopes in the same order; live listeners resume by it.
create table combside.placements (
  scope text not null,
  position integer not null,
  -- Envelope hash of the entry.
  hash text not null references combside.entries (hash),
  digest text not null,
  arrival bigint generated always as identity,
  primary key (scope, position),
  unique (scope, hash)
);
create unique index placements_arrival on combside.placements (arrival);

-- Where everything about an entity goes from now on, and whom it follows there.
create table combside.memberships (
  entity_type text not null,
  entity_id uuid not null,
  scope text not null,
  primary key (entity_type, entity_id, scope)
);
create table combside.follows (
  child_type text not null,
  child_id uuid not null,
  parent_type text not null,
  parent_id uuid not null,
  primary key (child_type, child_id, parent_type, parent_id)
);
create index follows_parent on combside.follows (parent_type, parent_id);

create extension if not exists pg_trgm;

create table combside.states (
  entity_type text not null,
  entity_id uuid not null,
  fold_version integer not null,
  state json not null,
  summary json not null,
  -- Drawn from state and summary for lists, search and the map.
  district text,
  keeper uuid,
  apiary uuid,
  inspector uuid,
  name text,
  search text,
  place point,
  happened_at timestamptz,
  primary key (entity_type, entity_id)
);
create index states_list on combside.states (entity_type, district, name, entity_id);
create index states_by_name on combside.states (entity_type, name, entity_id);
create index states_by_time on combside.states (entity_type, happened_at desc nulls last, entity_id desc);
create index states_keeper on combside.states (keeper, entity_type) where keeper is not null;
create index states_apiary on combside.states (apiary, entity_type, happened_at desc nulls last) where apiary is not null;
create index states_inspector on combside.states (inspector, happened_at desc nulls last) where inspector is not null;
create index states_version on combside.states (fold_version);
create index states_search on combside.states using gin (search gin_trgm_ops) where search is not null;
create index states_place on combside.states using gist (place) where place is not null;

-- Which colonies a visit examined, with the result last stated for each: its page is gathered from theirs.
create table combside.visit_colonies (
  visit uuid not null,
  colony uuid not null,
  result text,
  primary key (visit, colony)
);

create table combside.checkpoints (
  made_at timestamptz primary key,
  signed json not null
);

create table combside.photographs (
  hash text primary key,
  bytes bigint not null,
  media_type text not null,
  uploaded_by uuid not null,
  received_at timestamptz not null
);

-- Which entities speak of a photograph: whoever may read one of them may see it.
create table combside.photograph_references (
  hash text not null,
  entity_type text not null,
  entity_id uuid not null,
  primary key (hash, entity_type, entity_id)
);

create table combside.photograph_uploads (
  id text primary key,
  hash text not null,
  bytes bigint not null,
  media_type text not null,
  person uuid not null,
  begun_at timestamptz not null
);

-- People as the record names them (`by`), and what they may read and write. Accounts stand in a schema of their own.
create table combside.people (
  person uuid primary key,
  name text not null,
  role text not null check (role in ('inspector', 'office', 'server')),
  -- The sign-in account, when there is one.
  account text unique,
  active boolean not null default true
);

create table combside.districts (
  district text primary key,
  invented boolean not null default false
);

create table combside.grants (
  person uuid not null references combside.people (person),
  -- A district, or '*' for every district.
  district text not null,
  granted_at timestamptz not null,
  primary key (person, district)
);

-- The server's own device and author. Its key stands in the data folder, never here.
create table combside.server_identity (
  one boolean primary key default true check (one),
  device uuid not null,
  person uuid not null references combside.people (person)
);
