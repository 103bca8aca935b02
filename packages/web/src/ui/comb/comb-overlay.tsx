import { cellPath } from './cell-outlines.ts';
import { hatchOf } from './hatching.tsx';
import type { CombShown } from './shown-comb.ts';

interface CombOverlayProps {
  readonly comb: CombShown;
  /** Of the `Hatchings` in the same drawing. */
  readonly id: string;
  /** Cells a person spoke of. */
  readonly said: readonly number[];
  /** Cells whose capping stands out. */
  readonly second: readonly number[];
}

/** Thin outlines around patches of one kind, hatching within; cells spoken of are dashed, cappings to look at ringed; the corners a person set, joined. */
export function CombOverlay({ comb, id, said, second }: CombOverlayProps) {
  const outlined = said.map((cell) => cellPath(comb.outlines.corners, cell)).join('');
  const corners = comb.region && `M${comb.region.map(({ x, y }) => `${x} ${y}`).join('L')}Z`;
  return (
    <g className="comb-overlay">
      {comb.paths.areas.map((area) => (
        <path key={area.class} d={area.path} fill={hatchOf(id, area.class)} />
      ))}
      <path className="casing" d={comb.paths.borders} />
      <path className="line" d={comb.paths.borders} />
      <path className="casing" d={outlined} />
      <path className="line said" d={outlined} />
      {corners && <path className="casing corners" d={corners} />}
      {corners && <path className="line corners" d={corners} />}
      {second.map((n) => {
        const cell = comb.cells[n];
        return (
          cell && (
            <g key={n}>
              <circle className="casing wide" cx={cell.x} cy={cell.y} r={0.95 * comb.pitch} />
              <circle className="line wide" cx={cell.x} cy={cell.y} r={0.95 * comb.pitch} />
            </g>
          )
        );
      })}
    </g>
  );
}

/** The cell in hand, outlined boldly. */
export function CellInHand({ comb, cell }: { readonly comb: CombShown; readonly cell: number }) {
  const path = cellPath(comb.outlines.corners, cell);
  return (
    <g className="comb-overlay">
      <path className="casing bold" d={path} />
      <path className="line bold" d={path} />
    </g>
  );
}
