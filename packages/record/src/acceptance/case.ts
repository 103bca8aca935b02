/**
 * A port's acceptance suite is a list of cases, free of any test runner, so that the same text runs in Node and in a
 * browser's page. A runner makes a fresh subject for each case and awaits `check`, which throws when the port fails.
 */
export interface AcceptanceCase<Subject> {
  readonly name: string;
  check(subject: Subject): Promise<void>;
}

/** Throws unless both are equal as JSON says them (keys in any order). */
export function equal(actual: unknown, expected: unknown, what: string): void {
  const a = sorted(actual);
  const b = sorted(expected);
  if (a !== b) throw new Error(`${what}\n  expected ${b}\n  found    ${a}`);
}

export function truly(condition: boolean, what: string): void {
  if (!condition) throw new Error(what);
}

/** Throws unless `work` fails with an error whose `code` is this. */
export async function failsWith(code: string, work: () => Promise<unknown>, what: string): Promise<void> {
  let found: unknown;
  try {
    await work();
  } catch (error) {
    found = error;
  }
  if (found === undefined) throw new Error(`${what}: expected the error ${code}, but nothing failed`);
  if ((found as { code?: unknown }).code !== code)
    throw new Error(`${what}: expected the error ${code}, found ${found}`);
}

function sorted(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    inner !== null && typeof inner === 'object' && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}
