import { type PointerEvent, useRef } from 'react';
import { Button } from '../../ui/button.tsx';
import { useWords } from '../../ui/words-context.tsx';

const width = 300;
const height = 100;

interface SignaturePadProps {
  readonly path: string;
  readonly onPath: (path: string) => void;
}

/** A signature drawn with the finger, as a path in a box of 300 by 100. Drawing is never the only way: a typed name will do. */
export function SignaturePad({ path, onPath }: SignaturePadProps) {
  const words = useWords();
  const drawing = useRef(false);
  const at = (event: PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * width;
    const y = ((event.clientY - box.top) / box.height) * height;
    return `${Math.round(x)} ${Math.round(y)}`;
  };
  return (
    <div className="stack close">
      <span>{words.say('hive.result.sign-here')}</span>
      <svg
        className="signature"
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={words.say('hive.result.sign-here')}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          drawing.current = true;
          onPath(`${path}M${at(event)}`);
        }}
        onPointerMove={(event) => {
          // A signature longer than the record takes is cut, not refused.
          if (drawing.current && path.length < 19_000) onPath(`${path}L${at(event)}`);
        }}
        onPointerUp={() => {
          drawing.current = false;
        }}
      >
        <path d={path} fill="none" stroke="#1b1a17" strokeWidth={2} strokeLinecap="round" strokeLinejoin="round" />
      </svg>
      {path !== '' && <Button onClick={() => onPath('')}>{words.say('hive.result.sign-again')}</Button>}
      <span className="quiet">{words.say('hive.result.typed-instead')}</span>
    </div>
  );
}
