import type { Corner, Corners } from './corners.ts';
import type { PictureShown } from './shown-comb.ts';

/** The loupe shows so many times what the picture shows. */
const magnified = 3;
/** Width of the loupe as a share of the picture's, and where it may stand. */
const loupeShare = 0.4;
const loupePlaces = [0.5, 0.3, 0.7].flatMap((x) => [0.5, 0.3, 0.7].map((y) => ({ x, y })));

/** The mark of a corner: a ring that leaves the corner itself to be seen. */
export function Ring({ inHand }: { readonly inHand: boolean }) {
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
export function Loupe({ picture, corner, corners, path }: LoupeProps) {
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
