/*
 * What the inputs are that many calculations of this room take, with their ranges. Import as a whole, `import * as described`.
 */

export const designPrevalence = 'design prevalence P, fraction above 0, up to 1';
export const populationSize = 'population size N, whole, 1 or more';
export const populationSizeOrNull = 'population size N, whole, or null when unknown or very large';
export const infectedUnits = 'infected units d, whole, up to N';
export const confidence = 'confidence, fraction above 0 and below 1';
export const sensitivity = 'sensitivity of one test, fraction 0 to 1';
export const specificity = 'specificity of one test, fraction 0 to 1';
export const tested = 'units tested n, whole';
export const positives = 'positives x, whole, 0 to n';
export const cutPoint = 'cut-point c: called infected at c positives or more, whole, 1 to n';
