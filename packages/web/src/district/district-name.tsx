import { loadPack } from '@combside/law/load-pack';
import { createContext, type ReactNode, useCallback, useContext, useEffect, useState } from 'react';

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
  const [jurisdiction, setJurisdiction] = useState<string | null>(null);
  useEffect(() => {
    let left = false;
    // Without the rules the district keeps the name it has.
    loadPack(pack).then(
      (found) => !left && setJurisdiction(found.jurisdiction),
      () => undefined,
    );
    return () => {
      left = true;
    };
  }, [pack]);
  const nameOf = useCallback(
    (district: string) => (district === pack && jurisdiction !== null ? jurisdiction : district),
    [pack, jurisdiction],
  );
  return <Named value={nameOf}>{children}</Named>;
}
