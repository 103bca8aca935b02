/** The desk tells time as the machine on it does. */
export const deskTimeZone = Intl.DateTimeFormat().resolvedOptions().timeZone;
