import cdf from '@stdlib/stats-base-dists-beta-cdf';
import quantile from '@stdlib/stats-base-dists-beta-quantile';

/** Chance that a Beta(alpha, beta) fraction is x or less. alpha and beta above 0, x from 0 to 1. */
export const betaLowerTail = (x: number, alpha: number, beta: number): number => cdf(x, alpha, beta);

/** Chance that a Beta(alpha, beta) fraction is above x, by the mirrored distribution, so that it keeps its digits. */
export const betaUpperTail = (x: number, alpha: number, beta: number): number => cdf(1 - x, beta, alpha);

/** The fraction below which a Beta(alpha, beta) fraction lies with chance `probability`. */
export const betaQuantile = (probability: number, alpha: number, beta: number): number =>
  quantile(probability, alpha, beta);
