export const offence = process.env['TZ'];
