declare const device: { book: { write(proposals: readonly unknown[]): Promise<unknown> } };
export const keep = () => device.book.write([]);
