import { type PointerEvent, useId } from 'react';
import { nearestCell } from './cell-outlines.ts';
import { CellInHand, CombOverlay } from './comb-overlay.tsx';
import { Hatchings } from './hatching.tsx';
import type { CombShown } from './shown-comb.ts';

interface CellLensProps {
  readonly comb: CombShown;
  readonly cell: number;
  readonly overlay: boolean;
  readonly said: readonly number[];
  readonly second: readonly number[];
  readonly label: string;
  readonly onPick: (cell: number) => void;
}

/** Cells across the lens. */
const across = 5;
/** Screen pixels across the lens, roughly: only the hatching's width hangs on it. */
const usualWidth = 340;

/** One cell with its neighbours, magnified. A tap on a neighbour takes that one in hand. */
export function CellLens({ comb, cell, overlay, said, second, label, onPick }: CellLensProps) {
  const id = useId();
  const middle = comb.cells[cell];
  if (!middle) return null;
  const side = across * comb.pitch;
  const { width, height, address } = comb.picture;
  const pick = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const unit = side / box.width;
    const at = {
      x: middle.x - side / 2 + (event.clientX - box.left) * unit,
      y: middle.y - side / 2 + (event.clientY - box.top) * unit,
    };
    const next = nearestCell(comb.cells, at, comb.pitch);
    if (next !== null) onPick(next);
  };
  const near = (n: number) => {
    const other = comb.cells[n];
    return other !== undefined && Math.hypot(other.x - middle.x, other.y - middle.y) < side;
  };
  return (
    <svg
      className="comb-lens"
      viewBox={`${middle.x - side / 2} ${middle.y - side / 2} ${side} ${side}`}
      role="img"
      aria-label={label}
      onPointerUp={pick}
    >
      <Hatchings id={id} unit={(2 * side) / usualWidth} />
      <rect x={middle.x - side / 2} y={middle.y - side / 2} width={side} height={side} fill="#3f3b34" />
      <image href={address} width={width} height={height} preserveAspectRatio="none" />
      {overlay && <CombOverlay comb={comb} id={id} said={said.filter(near)} second={second.filter(near)} />}
      <CellInHand comb={comb} cell={cell} />
    </svg>
  );
}
