import { type CSSProperties, useId } from 'react';
import { Button } from '../button.tsx';
import { useWords } from '../words-context.tsx';
import { Loupe, Ring } from './corner-marks.tsx';
import { type Corner, type Corners, cornerNames, cornersTrouble } from './corners.ts';
import type { PictureShown } from './shown-comb.ts';
import { useCornersInHand } from './use-corners-in-hand.ts';

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

/**
 * The corners of the comb, set by a person: rings dragged by finger or mouse, moved by keys or by buttons, or brought to a
 * place that is tapped. A loupe shows what lies under the finger.
 */
export function CornerSetting({ picture, corners: standing, found, onCorners }: CornerSettingProps) {
  const words = useWords();
  const id = useId();
  const hand = useCornersInHand(picture, standing, onCorners);
  const { corners, inHand } = hand;
  const { width, height, address } = picture;
  const corner = corners[inHand] as Corner;
  const trouble = cornersTrouble(corners, picture);

  const nameOf = (which: number) => words.say(`comb.screen.corner.${cornerNames[which] ?? 'top-left'}`);
  const where = ({ x, y }: Corner) =>
    words.say('comb.screen.corner.at', { across: words.share(x / (width - 1)), down: words.share(y / (height - 1)) });
  const path = `M${corners.map(({ x, y }) => `${x + 0.5} ${y + 0.5}`).join('L')}Z`;
  return (
    <section
      className="comb-corners stack close"
      aria-label={words.say('comb.screen.corners')}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) hand.stopLooking();
      }}
    >
      <p role="status">{words.say(found ? 'comb.screen.corners.found' : 'comb.screen.corners.how')}</p>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: what a tap does here, each ring does by keys */}
      <div
        ref={hand.frame}
        className="comb-picture comb-cornered"
        style={{ '--ratio': width / height } as CSSProperties}
        onPointerDown={hand.beginTap}
        onPointerUp={hand.endTap}
        onPointerCancel={hand.forgetTap}
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
            onFocus={() => hand.setInHand(which)}
            onKeyDown={(event) => hand.press(event, which)}
            onPointerDown={(event) => hand.take(event, which)}
            onPointerMove={(event) => hand.drag(event, which)}
            onPointerUp={hand.letGo}
            onPointerCancel={hand.letGo}
          >
            <Ring inHand={which === inHand} />
          </button>
        ))}
        {hand.looking && <Loupe picture={picture} corner={corner} corners={corners} path={path} />}
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
            onClick={() => hand.step(inHand, across, down, 1)}
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
