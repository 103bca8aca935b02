import { createContext, type ReactNode, useCallback, useContext } from 'react';
import { usePack } from './use-pack.ts';

const Named = createContext<(district: string) => string>((district) => district);

/**
 * What a district is called: the jurisdiction of the rules in force where the district bears their name, else as the
 * office itself called it when the district was made.
 */
export function useDistrictName(): (district: string) => string {
  return useContext(Named);
}

/** Knows the names of districts for everything inside. @param pack the id of the rules in force */
export function NamesDistricts({ pack, children }: { readonly pack: string; readonly children: ReactNode }) {
  const jurisdiction = usePack(pack)?.jurisdiction ?? null;
  const nameOf = useCallback(
    (district: string) => (district === pack && jurisdiction !== null ? jurisdiction : district),
    [pack, jurisdiction],
  );
  return <Named value={nameOf}>{children}</Named>;
}
