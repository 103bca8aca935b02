import type { WallClock } from '@combside/record/ports';
import type { Words } from '@combside/words/words';

/** How a server is started: by `startServer` in the same process, or by what was typed (`read-options.ts`). */
export interface ServerOptions {
  /** Folder of everything the server keeps: database files, photographs, keys. */
  readonly data: string;
  /** First port to try; 0 takes any free one. */
  readonly port?: number;
  readonly host?: string;
  /** What people type, when a proxy stands in front: `https://...`. */
  readonly address?: string;
  /** An agency's own PostgreSQL; the embedded one when left out. */
  readonly databaseUrl?: string;
  /** Id of the rule pack in force: the law of the place. The invented one of the demo when left out. */
  readonly pack?: string;
  /** Folder of the built web app; `packages/web/dist` when left out. */
  readonly web?: string;
  /** Behind the apiaries on the map: a `.pmtiles` file, or an address of tiles with {z}, {x} and {y}. */
  readonly map?: string;
  /**
   * What time it is; the machine's clock when left out. Sessions alone stay on the machine's clock, because their cookies
   * end by the clock of the browser's machine.
   */
  readonly clock?: WallClock;
  /** Sign-in attempts a minute from one address. */
  readonly attemptsPerMinute?: number;
  /** Called with what a person at the terminal should know, already in words. */
  readonly say?: (line: string) => void;
  readonly words?: Words<'server'>;
}
