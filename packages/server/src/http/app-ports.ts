import type { Database } from '../store/database.ts';
import type {
  AccountsPort,
  ArrivalsPort,
  CombReadingsPort,
  OfficePort,
  PhotographsPort,
} from '../store/server-ports.ts';
import type { Background } from './background.ts';

/** Everything the HTTP edge needs; `start.ts` puts it together. */
export interface AppPorts {
  readonly database: Database;
  readonly accounts: AccountsPort;
  readonly office: OfficePort;
  readonly photographs: PhotographsPort;
  readonly combReadings: CombReadingsPort;
  readonly arrivals: ArrivalsPort;
  /** Folder of the built web app. */
  readonly web: string;
  /** Id of the rule pack in force here (law/load-pack). */
  readonly pack: string;
  /** What lies behind the apiaries on the map. */
  readonly background: Background;
  /** Version of the program. */
  readonly program: string;
  readonly server: { readonly device: string; readonly publicKey: string };
  readonly now: () => Date;
  /** True when people reach the server over https. */
  readonly secure: boolean;
  /** Falls when the server stops. */
  readonly stopping: AbortSignal;
  /** Told of what nobody expected; never of a body. */
  readonly complain: (error: unknown) => void;
}
