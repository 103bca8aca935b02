import { type CSSProperties, type KeyboardEvent, type PointerEvent, useEffect, useId, useRef, useState } from 'react';
import { cellTowards, type Direction, nearestCell } from './cell-outlines.ts';
import { CellInHand, CombOverlay } from './comb-overlay.tsx';
import { classesInOrder, Hatchings } from './hatching.tsx';
import type { CombShown } from './shown-comb.ts';

/** What a person may do on the picture, by finger, mouse or keys. */
export interface CombActs {
  readonly onPick: (cell: number, by: 'finger' | 'keys') => void;
  /** Enter on the cell in hand. */
  readonly onOpen?: (() => void) | undefined;
  /** Left out where nothing can be corrected. */
  readonly onClass?: ((cell: number, of: (typeof classesInOrder)[number]) => void) | undefined;
  readonly onUndo?: (() => void) | undefined;
}

interface CombPictureProps extends CombActs {
  readonly comb: CombShown;
  /** True takes the keys as soon as it is shown: a person comes back to it. */
  readonly focused?: boolean;
  /** False peels the overlay off. */
  readonly overlay: boolean;
  readonly inHand: number | null;
  readonly said: readonly number[];
  readonly second: readonly number[];
  /** What the picture is, and which keys do what. */
  readonly label: string;
  /** Id of the text that says what is in hand. */
  readonly describedBy: string;
}

const arrows: Readonly<Record<string, Direction>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

/** A press longer than this, in milliseconds, shows the bare picture until it ends. */
const holdAfter = 350;
/** A finger hits a cell within so many screen pixels. */
const fingerReach = 24;

/**
 * The photograph with what was read drawn over it. A tap takes the nearest cell in hand; holding shows the bare picture;
 * with keys the arrows walk from cell to cell, digits say what a cell holds, Page Up and Page Down go through the cappings
 * to look at again.
 */
export function CombPicture({
  comb,
  focused = false,
  overlay,
  inHand,
  said,
  second,
  label,
  describedBy,
  ...acts
}: CombPictureProps) {
  const id = useId();
  const frame = useRef<HTMLDivElement>(null);
  const [wide, setWide] = useState(360);
  const [held, setHeld] = useState(false);
  const pressed = useRef<{ timer: ReturnType<typeof setTimeout>; x: number; y: number } | null>(null);
  const { width, height, address } = comb.picture;
  const unit = width / wide;

  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const watch = new ResizeObserver(() => setWide(Math.max(1, element.clientWidth)));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);

  const [focusFirst] = useState(focused);
  useEffect(() => {
    if (focusFirst) frame.current?.focus({ preventScroll: true });
  }, [focusFirst]);

  const letGo = () => {
    if (pressed.current) clearTimeout(pressed.current.timer);
    pressed.current = null;
    setHeld(false);
  };
  const press = (event: PointerEvent) => {
    if (event.button !== 0) return;
    letGo();
    pressed.current = { timer: setTimeout(() => setHeld(true), holdAfter), x: event.clientX, y: event.clientY };
  };
  const release = (event: PointerEvent<HTMLDivElement>) => {
    const start = pressed.current;
    const wasHeld = held;
    letGo();
    // A finger that moved was scrolling.
    if (!start || wasHeld || Math.hypot(event.clientX - start.x, event.clientY - start.y) > 12) return;
    const box = event.currentTarget.getBoundingClientRect();
    const at = { x: (event.clientX - box.left) * unit, y: (event.clientY - box.top) * unit };
    const cell = nearestCell(comb.cells, at, Math.max(comb.pitch, fingerReach * unit));
    if (cell !== null) acts.onPick(cell, 'finger');
  };

  const walk = (event: KeyboardEvent) => {
    const direction = arrows[event.key];
    if (direction) {
      event.preventDefault();
      const middle = { x: width / 2, y: height / 2 };
      const next =
        inHand === null
          ? nearestCell(comb.cells, middle, Number.MAX_VALUE)
          : cellTowards(comb.cells, inHand, direction);
      if (next !== null) acts.onPick(next, 'keys');
      return;
    }
    if (event.key === 'PageDown' || event.key === 'PageUp') {
      if (second.length === 0) return;
      event.preventDefault();
      const at = inHand === null ? -1 : second.indexOf(inHand);
      const next = event.key === 'PageDown' ? at + 1 : at < 0 ? second.length - 1 : at - 1;
      acts.onPick(second[(next + second.length) % second.length] as number, 'keys');
      return;
    }
    if (event.key === 'Enter' && inHand !== null) acts.onOpen?.();
    if (event.key === 'z' && (event.ctrlKey || event.metaKey)) {
      event.preventDefault();
      acts.onUndo?.();
      return;
    }
    const of = classesInOrder[Number(event.key) - 1];
    if (of && inHand !== null && !event.ctrlKey && !event.metaKey && !event.altKey) {
      event.preventDefault();
      acts.onClass?.(inHand, of);
    }
  };

  return (
    // Thousands of cells are walked by keys of our own, as the label says: that is what the role is for.
    <div
      ref={frame}
      className="comb-picture"
      style={{ '--ratio': width / height } as CSSProperties}
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the role takes keys
      tabIndex={0}
      aria-label={label}
      aria-describedby={describedBy}
      onPointerDown={press}
      onPointerUp={release}
      onPointerCancel={letGo}
      onPointerLeave={letGo}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={walk}
    >
      <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        <Hatchings id={id} unit={unit} />
        <image href={address} width={width} height={height} preserveAspectRatio="none" />
        {overlay && !held && <CombOverlay comb={comb} id={id} said={said} second={second} />}
        {inHand !== null && !held && <CellInHand comb={comb} cell={inHand} />}
      </svg>
    </div>
  );
}
