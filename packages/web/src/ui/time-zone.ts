/** Screens tell time as the machine they stand on does: its time zone, an IANA name. */
export const timeZoneHere = Intl.DateTimeFormat().resolvedOptions().timeZone;
