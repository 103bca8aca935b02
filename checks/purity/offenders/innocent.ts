/** Names of members and of our own variables are nobody's clock. */
export interface Innocent {
  readonly performance: number;
  readonly process: string;
}

export function innocent(process: string, visit: { readonly document: number; readonly Date: number }): Innocent {
  const performance = Math.max(visit.document, visit.Date);
  const { document } = visit;
  return { performance: performance + document, process };
}

declare class TextEncoder {
  encode(text: string): Uint8Array;
}

export const bytes = new TextEncoder().encode('wax');
