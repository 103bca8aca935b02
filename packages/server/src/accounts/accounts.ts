import { betterAuth } from 'better-auth';
import { getMigrations } from 'better-auth/db/migration';
import { admin } from 'better-auth/plugins/admin';
import { type Database, withDatabaseLock } from '../store/database.ts';
import { rightsOfAccount, writePerson } from '../store/people.ts';
import { everyDistrict } from '../store/rights.ts';
import { type AccountsPort, addressHeader } from '../store/server-ports.ts';

/** Where the sign-in library answers. */
export const accountsPath = '/api/auth';

/** Two processes that start at once make the tables one after the other (number ours, chosen freely). */
const accountsLock = 3_301_404;

export interface AccountsOptions {
  readonly database: Database;
  /** At least 32 random characters, kept in the data folder. */
  readonly secret: string;
  /** The address people type, for example `http://127.0.0.1:4600`. Over https, cookies are marked secure. */
  readonly address: string;
  /** Sign-in attempts from one address within a minute; 20 unless told otherwise: an office signs in from one address in the morning. */
  readonly attemptsPerMinute?: number;
}

export interface NewPerson {
  readonly person: string;
  readonly name: string;
  readonly email: string;
  readonly password: string;
  readonly role: 'inspector' | 'office';
  readonly districts: 'all' | readonly string[];
}

export interface Accounts extends AccountsPort {
  /** Makes an account with its person and grants; does nothing where the mail address has one already. */
  readonly addPerson: (person: NewPerson, at: Date) => Promise<void>;
}

/** Accounts on the same pool as everything else, in a schema of their own; nobody can sign up by himself. */
export async function openAccounts(options: AccountsOptions): Promise<Accounts> {
  const { database } = options;
  const secure = options.address.startsWith('https:');
  const settings = {
    appName: 'Combside',
    baseURL: options.address,
    basePath: accountsPath,
    secret: options.secret,
    database: { db: database.sql, type: 'postgres' as const, schemaName: 'accounts', transaction: true },
    emailAndPassword: { enabled: true, disableSignUp: true, minPasswordLength: 12 },
    plugins: [admin({ adminRoles: ['admin'] })],
    trustedOrigins: [options.address, options.address.replace('//127.0.0.1', '//localhost')],
    session: { expiresIn: 14 * 24 * 3600, updateAge: 24 * 3600 },
    rateLimit: {
      enabled: true,
      storage: 'database' as const,
      window: 60,
      max: 300,
      customRules: { '/sign-in/email': { window: 60, max: options.attemptsPerMinute ?? 20 } },
    },
    advanced: {
      cookiePrefix: 'combside',
      useSecureCookies: secure,
      defaultCookieAttributes: { httpOnly: true, sameSite: 'strict' as const, secure, path: '/' },
      ipAddress: { ipAddressHeaders: [addressHeader] },
      database: { generateId: 'uuid' as const },
    },
    telemetry: { enabled: false },
    logger: { level: 'error' as const },
  };
  await withDatabaseLock(database, accountsLock, async () => (await getMigrations(settings)).runMigrations());
  const library = betterAuth(settings);

  return {
    handle: (request) => library.handler(request),
    signedIn: async (headers) => {
      const session = await library.api.getSession({ headers });
      if (!session) return null;
      const rights = await rightsOfAccount(database, session.user.id);
      return rights && { rights, email: session.user.email };
    },
    addPerson: async (person, at) => {
      const account = await accountOf(database, person.email);
      const { email, password, name, role } = person;
      const id =
        account ??
        (await library.api.createUser({ body: { email, password, name, role: role === 'office' ? 'admin' : 'user' } }))
          .user.id;
      const districts = person.districts === 'all' ? [everyDistrict] : person.districts;
      await writePerson(database, { person: person.person, name, role, account: id, active: true, districts }, at);
    },
  };
}

async function accountOf(database: Database, email: string): Promise<string | undefined> {
  const found = await database.pool.query<{ id: string }>('select id from accounts."user" where email = $1', [
    email.toLowerCase(),
  ]);
  return found.rows[0]?.id;
}
