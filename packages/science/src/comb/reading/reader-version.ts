/**
 * Version of the reading, kept with every reading that is written down. Raise it by one whenever the same photograph may
 * be read otherwise than before: other weights, thresholds, lattice or method of a figure. Readings of different versions
 * are not compared as if they were one measurement.
 */
export const readerVersion = 3;
