import { type KeyboardEvent, type PointerEvent, type RefObject, useRef, useState } from 'react';
import { type Corner, type Corners, nearestCorner, withCorner } from './corners.ts';
import type { PictureShown } from './shown-comb.ts';

const keys: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
  ArrowRight: [1, 0],
};

/** A step, as a share of the picture's longer side: less than a cell of a whole comb. With Shift ten of them. */
const stepShare = 1 / 100;

/** The corners while a person sets them: which is in hand, where they stand just now, and what moves them. */
export interface CornersInHand {
  /** Goes round the picture: places are reckoned from it. */
  readonly frame: RefObject<HTMLDivElement | null>;
  /** As they stand, with the one that is being dragged. */
  readonly corners: Corners;
  readonly inHand: number;
  readonly setInHand: (which: number) => void;
  /** True while the loupe is wanted. */
  readonly looking: boolean;
  readonly stopLooking: () => void;
  /** Of a ring. */
  take(event: PointerEvent<HTMLButtonElement>, which: number): void;
  drag(event: PointerEvent, which: number): void;
  letGo(event: PointerEvent): void;
  press(event: KeyboardEvent, which: number): void;
  /** Steps right and down; negative goes left and up. */
  step(which: number, across: number, down: number, many: number): void;
  /** Of the picture itself. */
  beginTap(event: PointerEvent): void;
  endTap(event: PointerEvent): void;
  forgetTap(): void;
}

/** @param onCorners told when a corner came to rest */
export function useCornersInHand(
  picture: PictureShown,
  standing: Corners,
  onCorners: (corners: Corners) => void,
): CornersInHand {
  const frame = useRef<HTMLDivElement>(null);
  const [inHand, setInHand] = useState(0);
  const [looking, setLooking] = useState(false);
  const [dragged, setDragged] = useState<Corners | null>(null);
  /** The same, told at once: a finger may be lifted before its last way is drawn. */
  const underFinger = useRef<Corners | null>(null);
  /** From the finger to the corner it holds, so that the corner does not jump under it. */
  const held = useRef<Corner | null>(null);
  const pressed = useRef<Corner | null>(null);
  const corners = dragged ?? standing;
  const { width, height } = picture;

  const dragTo = (to: Corners | null) => {
    underFinger.current = to;
    setDragged(to);
  };
  const placeOf = (event: PointerEvent): Corner => {
    const box = frame.current?.getBoundingClientRect();
    if (!box) return corners[inHand] as Corner;
    return {
      x: ((event.clientX - box.left) * width) / box.width - 0.5,
      y: ((event.clientY - box.top) * height) / box.height - 0.5,
    };
  };
  const take = (event: PointerEvent<HTMLButtonElement>, which: number) => {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = placeOf(event);
    const own = corners[which] as Corner;
    held.current = { x: own.x - at.x, y: own.y - at.y };
    setInHand(which);
    setLooking(true);
    dragTo(corners);
  };
  const drag = (event: PointerEvent, which: number) => {
    const from = held.current;
    const now = underFinger.current;
    if (!from || !now) return;
    const at = placeOf(event);
    dragTo(withCorner(now, which, { x: at.x + from.x, y: at.y + from.y }, picture));
  };
  const letGo = (event: PointerEvent) => {
    event.stopPropagation();
    if (!held.current) return;
    const rest = underFinger.current;
    held.current = null;
    setLooking(false);
    dragTo(null);
    if (rest) onCorners(rest);
  };
  const step = (which: number, across: number, down: number, many: number) => {
    const by = many * stepShare * Math.max(width, height);
    const from = corners[which] as Corner;
    setInHand(which);
    setLooking(true);
    onCorners(withCorner(corners, which, { x: from.x + by * across, y: from.y + by * down }, picture));
  };
  const press = (event: KeyboardEvent, which: number) => {
    const way = keys[event.key];
    if (!way) return;
    event.preventDefault();
    step(which, way[0], way[1], event.shiftKey ? 10 : 1);
  };
  const endTap = (event: PointerEvent) => {
    const start = pressed.current;
    pressed.current = null;
    // A finger that moved was scrolling.
    if (!start || Math.hypot(event.clientX - start.x, event.clientY - start.y) > 12) return;
    const at = placeOf(event);
    const which = nearestCorner(corners, at);
    setInHand(which);
    onCorners(withCorner(corners, which, at, picture));
  };

  return {
    frame,
    corners,
    inHand,
    setInHand,
    looking,
    stopLooking: () => setLooking(false),
    take,
    drag,
    letGo,
    press,
    step,
    beginTap: (event) => {
      pressed.current = event.button === 0 ? { x: event.clientX, y: event.clientY } : null;
    },
    endTap,
    forgetTap: () => {
      pressed.current = null;
    },
  };
}
