/** Something drawn over the comb at a place: colour, how opaque (0 to 1), and the shadow it throws (factor). */
export interface Cover {
  r: number;
  g: number;
  b: number;
  alpha: number;
  shadow: number;
  /** True where the comb cannot be seen at all. */
  opaque: boolean;
}
