import { type CSSProperties, type KeyboardEvent, type PointerEvent, useId, useRef, useState } from 'react';
import { Button } from '../button.tsx';
import { useWords } from '../words-context.tsx';
import { type Corner, type Corners, cornerNames, cornersTrouble, nearestCorner, withCorner } from './corners.ts';
import type { PictureShown } from './shown-comb.ts';

interface CornerSettingProps {
  readonly picture: PictureShown;
  /** Pixels of the upright picture, counted from 0 at their middle. */
  readonly corners: Corners;
  /** True while they stand where the frame round the comb was found, and nobody has moved one. */
  readonly found: boolean;
  /** Told when a corner came to rest. */
  readonly onCorners: (corners: Corners) => void;
}

const steps = [
  ['left', '←', -1, 0],
  ['up', '↑', 0, -1],
  ['down', '↓', 0, 1],
  ['right', '→', 1, 0],
] as const;

const keys: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
  ArrowRight: [1, 0],
};

/** A step, as a share of the picture's longer side: less than a cell of a whole comb. With Shift ten of them. */
const stepShare = 1 / 100;
/** The loupe shows so many times what the picture shows. */
const magnified = 3;
/** Width of the loupe as a share of the picture's, and where it may stand. */
const loupeShare = 0.4;
const loupePlaces = [0.5, 0.3, 0.7].flatMap((x) => [0.5, 0.3, 0.7].map((y) => ({ x, y })));

/**
 * The corners of the comb, set by a person: rings dragged by finger or mouse, moved by keys or by buttons, or brought to a
 * place that is tapped. A loupe shows what lies under the finger.
 */
export function CornerSetting({ picture, corners: standing, found, onCorners }: CornerSettingProps) {
  const words = useWords();
  const id = useId();
  const frame = useRef<HTMLDivElement>(null);
  const [inHand, setInHand] = useState(0);
  const [looking, setLooking] = useState(false);
  const [dragged, setDragged] = useState<Corners | null>(null);
  /** From the finger to the corner it holds, so that the corner does not jump under it. */
  const held = useRef<Corner | null>(null);
  const pressed = useRef<Corner | null>(null);
  const corners = dragged ?? standing;
  const { width, height, address } = picture;
  const corner = corners[inHand] as Corner;
  const trouble = cornersTrouble(corners, picture);

  const placeOf = (event: PointerEvent): Corner => {
    const box = frame.current?.getBoundingClientRect();
    if (!box) return corner;
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
    setDragged(corners);
  };
  const drag = (event: PointerEvent, which: number) => {
    const from = held.current;
    if (!from || !dragged) return;
    const at = placeOf(event);
    setDragged(withCorner(dragged, which, { x: at.x + from.x, y: at.y + from.y }, picture));
  };
  const letGo = (event: PointerEvent) => {
    event.stopPropagation();
    if (!held.current) return;
    held.current = null;
    setLooking(false);
    setDragged(null);
    if (dragged) onCorners(dragged);
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
  const tap = (event: PointerEvent) => {
    const start = pressed.current;
    pressed.current = null;
    // A finger that moved was scrolling.
    if (!start || Math.hypot(event.clientX - start.x, event.clientY - start.y) > 12) return;
    const at = placeOf(event);
    const which = nearestCorner(corners, at);
    setInHand(which);
    onCorners(withCorner(corners, which, at, picture));
  };

  const nameOf = (which: number) => words.say(`comb.screen.corner.${cornerNames[which] ?? 'top-left'}`);
  const where = ({ x, y }: Corner) =>
    words.say('comb.screen.corner.at', { across: words.share(x / (width - 1)), down: words.share(y / (height - 1)) });
  const path = `M${corners.map(({ x, y }) => `${x + 0.5} ${y + 0.5}`).join('L')}Z`;
  return (
    <section
      className="comb-corners stack close"
      aria-label={words.say('comb.screen.corners')}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) setLooking(false);
      }}
    >
      <p role="status">{words.say(found ? 'comb.screen.corners.found' : 'comb.screen.corners.how')}</p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: what a tap does here, each ring does by keys */}
      <div
        ref={frame}
        className="comb-picture comb-cornered"
        style={{ '--ratio': width / height } as CSSProperties}
        onPointerDown={(event) => {
          pressed.current = event.button === 0 ? { x: event.clientX, y: event.clientY } : null;
        }}
        onPointerUp={tap}
        onPointerCancel={() => {
          pressed.current = null;
        }}
        onContextMenu={(event) => event.preventDefault()}
      >
        <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
          <image href={address} width={width} height={height} preserveAspectRatio="none" />
          <path className="left-out" d={`M0 0H${width}V${height}H0Z${path}`} />
          <g className="comb-overlay">
            <path className="casing" d={path} />
            <path className="line" d={path} />
          </g>
        </svg>
        {corners.map((own, which) => (
          <button
            key={cornerNames[which]}
            type="button"
            role="slider"
            className="comb-ring"
            style={{ left: `${((own.x + 0.5) / width) * 100}%`, top: `${((own.y + 0.5) / height) * 100}%` }}
            aria-label={nameOf(which)}
            aria-describedby={`${id}-keys`}
            aria-valuemin={0}
            aria-valuemax={100}
            aria-valuenow={Math.round((100 * own.x) / (width - 1))}
            aria-valuetext={where(own)}
            onFocus={() => setInHand(which)}
            onKeyDown={(event) => press(event, which)}
            onPointerDown={(event) => take(event, which)}
            onPointerMove={(event) => drag(event, which)}
            onPointerUp={letGo}
            onPointerCancel={letGo}
          >
            <Ring inHand={which === inHand} />
          </button>
        ))}
        {looking && <Loupe picture={picture} corner={corner} corners={corners} path={path} />}
      </div>
      <p id={`${id}-keys`} className="visually-hidden">
        {words.say('comb.screen.corners.how-keys')}
      </p>
      <p className="quiet" role="status">
        {words.say('comb.screen.corner.in-hand', { corner: nameOf(inHand), where: where(corner) })}
      </p>
      <div className="comb-steps">
        {steps.map(([direction, arrow, across, down]) => (
          <Button
            key={direction}
            aria-label={words.say(`comb.screen.corner.step.${direction}`, { corner: nameOf(inHand) })}
            onClick={() => step(inHand, across, down, 1)}
          >
            {arrow}
          </Button>
        ))}
      </div>
      {trouble && (
        <p className="caution" role="alert">
          {words.say(`comb.screen.corners.${trouble}`)}
        </p>
      )}
    </section>
  );
}

/** The mark of a corner: a ring that leaves the corner itself to be seen. */
function Ring({ inHand }: { readonly inHand: boolean }) {
  const around = 'M24 4A20 20 0 1 1 23.9 4';
  const cross = 'M24 4V18M24 30V44M4 24H18M30 24H44';
  return (
    <svg viewBox="0 0 48 48" aria-hidden="true" className={inHand ? 'comb-overlay in-hand' : 'comb-overlay'}>
      <path className="casing wide" d={around} />
      <path className="casing" d={cross} />
      <path className={inHand ? 'line bold' : 'line wide'} d={around} />
      <path className="line" d={cross} />
    </svg>
  );
}

interface LoupeProps {
  readonly picture: PictureShown;
  readonly corner: Corner;
  readonly corners: Corners;
  /** The lines between the corners. */
  readonly path: string;
}

/** What lies around a corner, magnified, where it is farthest from every ring: the finger does not hide it. */
function Loupe({ picture, corner, corners, path }: LoupeProps) {
  const { width, height, address } = picture;
  const free = (place: Corner) =>
    Math.min(...corners.map((one) => Math.hypot(one.x - place.x * width, one.y - place.y * height)));
  const place = loupePlaces.reduce((best, one) => (free(one) > free(best) ? one : best));
  const [x, y] = [corner.x + 0.5, corner.y + 0.5];
  const side = (loupeShare * width) / magnified;
  return (
    <svg
      className="comb-loupe"
      style={{
        width: `${100 * loupeShare}%`,
        left: `${100 * place.x}%`,
        top: `${100 * place.y}%`,
      }}
      viewBox={`${x - side / 2} ${y - side / 2} ${side} ${side}`}
      aria-hidden="true"
    >
      <rect x={x - side / 2} y={y - side / 2} width={side} height={side} fill="#3f3b34" />
      <image href={address} width={width} height={height} preserveAspectRatio="none" />
      <g className="comb-overlay">
        <path className="casing" d={path} />
        <path className="line" d={path} />
        <path className="casing" d={`M${x - side / 10} ${y}h${side / 5}M${x} ${y - side / 10}v${side / 5}`} />
        <path className="line" d={`M${x - side / 10} ${y}h${side / 5}M${x} ${y - side / 10}v${side / 5}`} />
      </g>
    </svg>
  );
}
