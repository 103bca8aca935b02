import stranger from 'stranger';

export const offence = stranger;
