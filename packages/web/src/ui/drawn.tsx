import type { Drawing } from '@combside/papers/drawings/drawing';
import { inks, washes } from '@combside/papers/drawings/palette';

interface DrawnProps {
  readonly drawing: Drawing;
  /** Width on the screen in CSS pixels. */
  readonly width: number;
  /** The drawing's name. Empty where the same name stands beside it in words: it is then hidden from a screen reader. */
  readonly name: string;
}

/** Shows one of our line drawings. Brood colours are facts, so on a dark screen the drawing lies on a light plate. */
export function Drawn({ drawing, width, name }: DrawnProps) {
  const hidden = name === '';
  return (
    <svg
      className="drawn"
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      width={width}
      height={(width * drawing.height) / drawing.width}
      role={hidden ? undefined : 'img'}
      aria-hidden={hidden || undefined}
      aria-label={hidden ? undefined : name}
      focusable="false"
    >
      {!hidden && <title>{name}</title>}
      {drawing.shapes.map((shape, index) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: shapes of a drawing have no identity and never move
          key={index}
          d={shape.d}
          fill={washes[shape.fill]}
          stroke={inks[shape.stroke]}
          strokeWidth={shape.weight}
          strokeDasharray={shape.dash?.join(' ')}
          vectorEffect="non-scaling-stroke"
          strokeLinecap="round"
          strokeLinejoin="round"
        />
      ))}
      {drawing.labels.map((label) => (
        <text
          key={`${label.x} ${label.y}`}
          x={label.x}
          y={label.y}
          fontSize={label.size}
          textAnchor={label.anchor}
          fill={inks.ink}
        >
          {label.text}
        </text>
      ))}
    </svg>
  );
}
