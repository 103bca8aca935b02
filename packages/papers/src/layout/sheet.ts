/** A4 in points (ISO 216: 210 by 297 mm). */
export const page = { width: 595.28, height: 841.89 } as const;

/** 19 mm at the sides, so that a punch and a thumb find room. */
export const margins = { left: 54, right: 54, top: 54, bottom: 64 } as const;

/** Width of a line that goes from margin to margin, in points. */
export const lineWidth = page.width - margins.left - margins.right;

/** Where the room for what is said ends, in points from the top of the page. */
export const bottomEdge = page.height - margins.bottom;

/** Heights of letters, in points. */
export const sizes = { title: 20, section: 13, part: 11, body: 10, small: 8.5, large: 12.5 } as const;

/** Height of a line for each point of its letters. */
export const leading = 1.36;
