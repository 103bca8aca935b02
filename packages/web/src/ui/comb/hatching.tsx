import { type CellClass, cellClasses } from '@combside/science/comb/cells/cell-classes';

/** Every class in the order of its key: the digit 1 sets the first, 9 the last. */
export const classesInOrder: readonly CellClass[] = [...cellClasses, 'not-decided'];

/** What is drawn in one tile of the hatching, in units of a screen pixel; empty classes stay bare. */
const tiles: Readonly<
  Record<CellClass, { readonly size: number; readonly turn: number; readonly path: string } | null>
> = {
  'sealed-worker-brood': { size: 8, turn: 45, path: 'M0 4H8' },
  'sealed-drone-brood': { size: 11, turn: 45, path: 'M0 5.5H11M5.5 0V11' },
  'sealed-honey': { size: 8, turn: 0, path: 'M0 4H8' },
  'open-empty': null,
  'egg-or-larva': { size: 9, turn: 0, path: 'M4.5 2V7' },
  nectar: { size: 10, turn: 0, path: 'M2 3H8M0 8H3M7 8H10' },
  pollen: { size: 7, turn: 0, path: 'M2.5 3.5H4.5M3.5 2.5V4.5' },
  hidden: { size: 5, turn: -45, path: 'M0 2.5H5' },
  'not-decided': { size: 13, turn: 0, path: 'M6.5 3.5A3 3 0 1 1 6.4 3.5' },
};

/**
 * The hatchings of all classes, told apart by the way their lines run and not by colour. Each line is light in a dark
 * casing, to be seen on old comb as on new.
 *
 * @param unit picture pixels a screen pixel covers
 */
export function Hatchings({ id, unit }: { readonly id: string; readonly unit: number }) {
  return (
    <defs>
      {classesInOrder.map((of) => {
        const tile = tiles[of];
        return (
          tile && (
            <pattern
              key={of}
              id={`${id}-${of}`}
              patternUnits="userSpaceOnUse"
              width={tile.size}
              height={tile.size}
              patternTransform={`scale(${unit}) rotate(${tile.turn})`}
            >
              <path d={tile.path} fill="none" stroke="#1b1a17" strokeWidth={2.2} strokeOpacity={0.75} />
              <path d={tile.path} fill="none" stroke="#fffdf8" strokeWidth={1.1} />
            </pattern>
          )
        );
      })}
    </defs>
  );
}

/** The fill of a class's area within a drawing that holds `Hatchings` of this id. */
export function hatchOf(id: string, of: CellClass): string {
  return tiles[of] ? `url(#${id}-${of})` : 'none';
}

/** A piece of a class's hatching, beside its name. */
export function Swatch({ id, of }: { readonly id: string; readonly of: CellClass }) {
  const own = `${id}-swatch-${of}`;
  return (
    <svg className="comb-swatch" width={36} height={36} viewBox="0 0 36 36" aria-hidden="true">
      <Hatchings id={own} unit={1} />
      <rect x={1} y={1} width={34} height={34} fill="#a5824f" />
      <rect x={1} y={1} width={34} height={34} fill={hatchOf(own, of)} stroke="#1b1a17" strokeWidth={2} />
    </svg>
  );
}
