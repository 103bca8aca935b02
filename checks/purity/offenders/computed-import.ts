export const offence = (path: string) => import(path);
