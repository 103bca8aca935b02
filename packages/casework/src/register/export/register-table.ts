import { type Field, fields, headerOf } from '../import/columns.ts';
import type { ApiaryStanding, KeeperStanding, RegisterRowsHeld } from '../rows.ts';

/**
 * The register as a table, first row the headers: one row for each site with its keeper, then the keepers without a site.
 * Reading it in again changes nothing. Records that are read as part of another are left out.
 */
export function registerTable(held: RegisterRowsHeld): string[][] {
  const keepers = new Map(held.keepers.map((row) => [row.id, row]));
  const withSite = new Set<string>();
  const rows = held.apiaries
    .filter((row) => row.mergedInto === null)
    .map((site) => {
      const keeper = site.body.keeper === null ? undefined : keepers.get(site.body.keeper);
      if (keeper) withSite.add(keeper.id);
      return cellsOf(site, keeper);
    });
  for (const keeper of held.keepers) {
    if (keeper.mergedInto === null && !withSite.has(keeper.id)) rows.push(cellsOf(undefined, keeper));
  }
  return [fields.map((field) => headerOf[field]), ...rows];
}

function cellsOf(site: ApiaryStanding | undefined, keeper: KeeperStanding | undefined): string[] {
  const values: Record<Field, string | number | null | undefined> = {
    siteRecord: site?.id,
    siteNumber: site?.body.number,
    siteName: site?.body.name,
    siteAddress: site?.body.addressWords,
    latitude: site?.body.position?.latitude,
    longitude: site?.body.position?.longitude,
    uncertaintyMetres: site?.body.position?.uncertaintyMetres,
    coloniesRegistered: site?.body.coloniesRegistered,
    lastConfirmedOn: site?.body.lastConfirmedOn,
    keeperRecord: keeper?.id,
    keeperNumber: keeper?.body.number,
    keeperName: keeper?.body.name,
    keeperAddress: keeper?.body.addressWords,
    telephone: keeper?.body.telephone,
    email: keeper?.body.email,
    language: keeper?.body.language,
    trade: keeper?.body.trade,
  };
  return fields.map((field) => plain(values[field]));
}

/** Numbers with a decimal point and never in powers of ten; line ends within a cell as a blank, since a cell is one line. */
function plain(value: string | number | null | undefined): string {
  if (typeof value === 'number') return Number.isInteger(value) ? String(value) : value.toFixed(9).replace(/0+$/, '');
  return value ?? '';
}
