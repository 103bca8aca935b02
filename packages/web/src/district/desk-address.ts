import { useSearchParams } from 'wouter';

/** How the middle of the desk is shown, as its address says. */
export interface DeskAddress {
  readonly show: 'list' | 'map';
  readonly search: string;
  /** The address of a page, with the middle as it stands. */
  to(path: string): string;
  /** Shows the middle otherwise, without leaving the page that is open. */
  change(part: { readonly show?: 'list' | 'map'; readonly search?: string }): void;
}

/** Reads and changes what stands behind the question mark, so that every view of the desk has an address. */
export function useDeskAddress(): DeskAddress {
  const [params, setParams] = useSearchParams();
  const query = params.toString();
  return {
    show: params.get('show') === 'map' ? 'map' : 'list',
    search: params.get('search') ?? '',
    to: (path) => (query === '' ? path : `${path}?${query}`),
    change(part) {
      setParams(
        (before) => {
          const next = new URLSearchParams(before);
          for (const [name, value] of Object.entries(part)) {
            if (value === '' || value === 'list') next.delete(name);
            else next.set(name, value);
          }
          return next;
        },
        { replace: part.search !== undefined },
      );
    },
  };
}
