/**
 * The lines of all pages, each once: what was renamed between two askings may stand on two pages.
 *
 * @param pages null while there are none
 */
export function onceEach<Page, Line>(
  pages: readonly Page[] | null,
  linesOf: (page: Page) => readonly Line[],
  idOf: (line: Line) => string,
): Line[] {
  const known = new Set<string>();
  return (pages ?? []).flatMap(linesOf).filter((line) => {
    const id = idOf(line);
    if (known.has(id)) return false;
    known.add(id);
    return true;
  });
}
