/**
 * What one brood cell looks like from the side. Only what differs from an empty open cell is written.
 * Plain words, so that the catalogue of signs can carry them without knowing this package.
 */
export interface CellSectionParameters {
  /** Worker cappings are a little domed; a drone dome stands out like a bullet. Default `none`: the cell is open. */
  readonly capping?: 'none' | 'domed' | 'flat' | 'sunken' | 'perforated' | 'torn' | 'drone dome';
  /** The capping is dark, moist or greasy. */
  readonly cappingDark?: boolean;
  /** What lies in the cell. Default `empty`. */
  readonly content?:
    | 'empty'
    | 'egg'
    | 'coiled'
    | 'twisted'
    | 'stretched'
    | 'slumped'
    | 'pupa'
    | 'mummy'
    | 'sac'
    | 'dry'
    | 'pollen'
    | 'nectar';
  /** Colour of the brood. Default `pearl`. */
  readonly colour?: 'pearl' | 'yellow' | 'brown' | 'dark' | 'white' | 'grey';
  /** Dried remains: flat along the lower wall, curled at the mouth, loose with raised ends, or twisted and rubbery. */
  readonly scale?: 'none' | 'lower wall' | 'mouth' | 'loose' | 'rubbery';
  /** Length of the thread drawn out by a stick, in millimetres, 0 to 60. Absent: no rope test is drawn. */
  readonly threadMillimetres?: number;
  /** The pupal tongue: a fine thread from the remains across the cell to the upper wall. */
  readonly tongue?: boolean;
  /** Head end raised toward the mouth and darker than the body. */
  readonly headRaised?: boolean;
  /** Pale lines of the breathing tubes show through the skin. */
  readonly tracheae?: boolean;
  /** White growth like cotton around the body. */
  readonly fluff?: boolean;
  /** Coloured dust upon the body. */
  readonly powder?: boolean;
  /** The body shines. */
  readonly shiny?: boolean;
  /** No brood food around the larva. Without it a coiled larva lies in its food. */
  readonly unfed?: boolean;
  /** Remains are watery or break off short. */
  readonly watery?: boolean;
  /** Mites on the body or the wall, 0 to 3. */
  readonly mites?: number;
  /** Eggs in the cell, 1 to 4; more than one stand on the walls too. Only with content `egg`. */
  readonly eggs?: number;
  /** The rim stands up around the opened mouth. */
  readonly raisedRim?: boolean;
  /** Silk and droppings of the wax moth. */
  readonly moth?: boolean;
}

/** One to three cells one above the other, as a cut through the comb shows them, and what is around them. */
export interface CombSectionParameters {
  readonly cells: readonly CellSectionParameters[];
  /** Smell that comes out of the cells. */
  readonly smell?: 'glue' | 'sour' | 'other';
  /** What lies on the hive's floor below the comb. */
  readonly floor?: 'mummies' | 'scales' | 'dead brood';
  /** Bees on the comb, where their number is the sign. */
  readonly bees?: 'few' | 'many';
}
