import { type CombStanding, combStanding } from '@combside/contract/comb-standing';
import { useSearchParams } from 'wouter';
import { mostAsked } from './ask-reading.ts';

/** Which photographs of combs are shown, as the address says. */
export interface CombsAddress {
  readonly visit: string | null;
  readonly apiary: string | null;
  readonly standing: CombStanding | null;
  /** False on a page further down. */
  readonly isNewest: boolean;
  /** The question to the office. */
  readonly asked: string;
  /** The question for so many of one standing as can be sent to the machine at once. */
  askedOf(standing: CombStanding): string;
  /** The address of the page that begins after a mark; null for the newest. */
  page(after: string | null): string;
  show(standing: CombStanding | null): void;
}

/** Reads and changes what stands behind the question mark. */
export function useCombsAddress(): CombsAddress {
  const [params, setParams] = useSearchParams();
  const standing = combStanding.safeParse(params.get('standing')).data ?? null;
  const scope = new URLSearchParams();
  for (const name of ['visit', 'apiary']) {
    const value = params.get(name);
    if (value !== null) scope.set(name, value);
  }
  const shown = new URLSearchParams(scope);
  if (standing) shown.set('standing', standing);
  const after = params.get('after');
  const question = (from: URLSearchParams, more: Readonly<Record<string, string>>) =>
    `/api/comb-photographs?${new URLSearchParams([...from, ...Object.entries(more)])}`;
  return {
    visit: params.get('visit'),
    apiary: params.get('apiary'),
    standing,
    isNewest: after === null,
    asked: question(shown, { limit: '60', ...(after === null ? {} : { after }) }),
    askedOf: (one) => question(scope, { standing: one, limit: String(mostAsked) }),
    page: (mark) => {
      const query = new URLSearchParams([...shown, ...(mark === null ? [] : [['after', mark]])]).toString();
      return query === '' ? '/combs' : `/combs?${query}`;
    },
    show: (one) => {
      const next = new URLSearchParams(scope);
      if (one) next.set('standing', one);
      setParams(next);
    },
  };
}
