/** A failure as it may leave the device: where in the program, never what was in the record. */
export interface Fault {
  readonly at: string;
  readonly name: string;
  /** Places in our own code. The error's message is left out, since it may quote what somebody typed. */
  readonly where: readonly string[];
}

const kept: Fault[] = [];

/** Keeps the last fifty failures of this session in memory. */
export function keepFault(error: Error, componentStack: string): void {
  const frames = `${error.stack ?? ''}\n${componentStack}`
    .split('\n')
    .map((line) => /(?:at |@)([^\s(]*).*?([\w.-]+\.(?:tsx?|js)):(\d+):(\d+)/.exec(line))
    .filter((match) => match !== null)
    .map((match) => `${match[1]} ${match[2]}:${match[3]}:${match[4]}`);
  kept.push({ at: new Date().toISOString(), name: error.name, where: frames.slice(0, 20) });
  if (kept.length > 50) kept.shift();
}

export function keptFaults(): readonly Fault[] {
  return kept;
}

/** Notes failures nobody caught, from the first moment on. */
export function listenForFaults(): void {
  addEventListener('error', (event) => keepFault(event.error instanceof Error ? event.error : new Error('error'), ''));
  addEventListener('unhandledrejection', (event) =>
    keepFault(event.reason instanceof Error ? event.reason : new Error('rejection'), ''),
  );
}
