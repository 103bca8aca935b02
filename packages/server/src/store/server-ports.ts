import type { CombReadingProposed, CombReadingsTold } from '@combside/contract/comb-readings';
import type { Checkpoint, Greeting, Page, PushResult } from '@combside/record/transport';
import type { Rights } from './rights.ts';

/** The ports at which the rooms of the server meet. `assemble.ts` makes what stands behind each and hands it to the HTTP edge. */

/** Who is signed in: the rights, and the mail address of the account. */
export interface SignedIn {
  readonly rights: Rights;
  readonly email: string;
}

export interface AccountsPort {
  /** Answers everything below `/api/auth`. */
  readonly handle: (request: Request) => Promise<Response>;
  /** The person behind a request's cookies, or null. */
  readonly signedIn: (headers: Headers) => Promise<SignedIn | null>;
}

export interface PhotographsPort {
  /** Answers the upload protocol below `/api/uploads`, for one person. */
  readonly handleUpload: (request: Request, person: string) => Promise<Response>;
  /** The bytes of a photograph, or null where there are none that this person may see. */
  readonly open: (
    hash: string,
    rights: Rights,
  ) => Promise<{
    readonly body: ReadableStream<Uint8Array>;
    readonly bytes: number;
    readonly mediaType: string;
  } | null>;
  /** The same photograph turned upright and small, as a JPEG; null also where it is no picture that can be shrunk. */
  readonly small: (hash: string, rights: Rights) => Promise<Uint8Array<ArrayBuffer> | null>;
  /** True when the bytes are held and this person may see them. */
  readonly readable: (hash: string, rights: Rights) => Promise<boolean>;
  /** Which of these are held. */
  readonly held: (hashes: readonly string[]) => Promise<readonly string[]>;
}

/** Stored photographs read by the server; what comes out is a proposal of the machine, never an entry. */
export interface CombReadingsPort {
  /** Asks for readings, and tells how far each is. */
  readonly ask: (hashes: readonly string[], rights: Rights, now: Date) => Promise<CombReadingsTold>;
  /** Takes back what still waits, and tells how far the others are. */
  readonly cancel: (hashes: readonly string[], rights: Rights) => Promise<CombReadingsTold>;
  /** What the machine made of one photograph; null where nobody asked, or this person may not see it. */
  readonly proposed: (hash: string, rights: Rights) => Promise<CombReadingProposed | null>;
}

/** The office as the wire sees it: the four questions of the record's transport, asked by one person. */
export interface OfficePort {
  readonly greet: (rights: Rights) => Promise<Greeting>;
  readonly push: (rights: Rights, entries: readonly unknown[]) => Promise<readonly PushResult[]>;
  readonly pull: (rights: Rights, scope: string, after: number, limit: number) => Promise<Page>;
  readonly checkpoint: (rights: Rights, scope: string, position: number) => Promise<Checkpoint>;
}

/** Wakes whoever waits when entries were placed, by this process or another. */
export interface ArrivalsPort {
  readonly subscribe: (wake: () => void) => () => void;
}

/** Header in which the HTTP edge says from where a request came; whatever the client wrote there is thrown away. */
export const addressHeader = 'x-combside-address';
