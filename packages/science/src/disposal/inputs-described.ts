/*
 * What is said of inputs that several calculations of this room take. Import as a whole, `import * as described`.
 */

export const beesDead = 'must be true: bees are killed first';
/** After the range of a figure nobody published. */
export const toBeChosen = '(no published figure: choose one, or ask the authority)';
