/** Fetches the screen of a closed colony, so that what was decided stands there the moment a colony is closed. */
export const fetchClosedColony = () => import('./closed-colony.tsx');
