export const offence = require('node:fs');
