/**
 * Days until the scale is dry.
 * Sources: DCOMMENT-2.3, ECOMMENT. NEVER is only a word here.
 */
export const days = { value: 30, sources: ['ALIST', 'NOBODY12'] };
export const more = { value: 31, source: 'BONE' };
