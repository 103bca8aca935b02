declare const writing: { write(input: string): Promise<unknown> };
export const keep = () => writing.write('by the one way');
