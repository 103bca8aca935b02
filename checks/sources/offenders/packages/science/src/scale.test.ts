export const days = { value: 30, sources: ['ONLY-IN-A-TEST'] };
