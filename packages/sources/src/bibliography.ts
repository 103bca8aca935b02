import entries from './bibliography.json';

/** The short key by which code and data refer to a source, for example `NZ-ROPE`. */
export type SourceId = keyof typeof entries;

/** One work in the bibliography: what it is (with year and section) and where its text was seen. */
export interface Source {
  readonly title: string;
  readonly seenAt: string;
}

/**
 * Looks up one source.
 *
 * @param id key in the bibliography
 * @returns the title (with year and section) and where the text was seen
 * @throws RangeError when the bibliography has no such key
 */
export function source(id: string): Source {
  const found = (entries as Record<string, Source>)[id];
  if (!found) {
    throw new RangeError(`no source "${id}" in the bibliography; add it to packages/sources/src/bibliography.json`);
  }
  return found;
}

/**
 * A source as a reader is told of it: its title, and where its text was seen where the title does not say so.
 *
 * @throws RangeError when the bibliography has no such key
 */
export function citation(id: SourceId): string {
  const { title, seenAt } = source(id);
  return seenAt === '' ? title : `${title} (${seenAt})`;
}
