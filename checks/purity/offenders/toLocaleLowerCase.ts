export const offence = 'I'['toLocaleLowerCase']();
