/** The screens of one open colony, as they stand in the address; `look` is the first and has no word there. */
export const views = ['look', 'less', 'signs', 'more', 'why', 'close'] as const;
export type View = (typeof views)[number];
