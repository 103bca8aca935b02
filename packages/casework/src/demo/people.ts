import type { InspectionRecord } from '../report/inspection-record.ts';

/** A person of the invented office. Names and numbers are made up; accounts take their ids from here. */
export interface DemoPerson {
  readonly id: string;
  readonly name: string;
  readonly role: 'inspector' | 'office lead';
  /** What the demo account is called. */
  readonly account: string;
  readonly warrant: string | null;
  /** The device that wrote this person's entries of the last two years. */
  readonly device: { readonly id: string; readonly name: string };
}

const person = (
  number: number,
  name: string,
  account: string,
  role: DemoPerson['role'],
  device: string,
): DemoPerson => ({
  id: `01900000-0000-7000-8000-00000000010${number}`,
  name,
  role,
  account,
  warrant: role === 'inspector' ? `QM-${100 + number} (invented)` : null,
  device: { id: `01900000-0000-7000-8000-00000000020${number}`, name: device },
});

export const officeLead = person(1, 'Wilda Harrowgate', 'wilda', 'office lead', 'desk in the office');
export const inspectors: readonly DemoPerson[] = [
  person(2, 'Ines Marrowby', 'ines', 'inspector', 'phone of Ines'),
  person(3, 'Tobin Vexley', 'tobin', 'inspector', 'phone of Tobin'),
  person(4, 'Odalys Fenwright', 'odalys', 'inspector', 'phone of Odalys'),
];

export const demoPeople: readonly DemoPerson[] = [officeLead, ...inspectors];

/** The inspector of the main journey. */
export const inspectorOfTheDay: DemoPerson = inspectors[0] as DemoPerson;

/** How the invented authority writes itself on paper. */
export const demoAuthority = 'Quillmoor Office of Bee Inspection (invented)';
/** The invented place keeps universal time. */
export const demoTimeZone = 'Etc/UTC';
/** The one district of the invented place. */
export const demoDistrict = 'quillmoor';

/** The inspector as papers name one. */
export function asInspector(one: DemoPerson): InspectionRecord['inspector'] {
  return { name: one.name, office: demoAuthority, warrant: one.warrant };
}
