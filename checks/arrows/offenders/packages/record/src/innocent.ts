import zod from 'zod';

export const fine = zod;
