import { drawSign } from '@combside/papers/drawings/sign-drawing';
import { isSign } from '@combside/science/signs/catalogue';
import { drawingOf } from '@combside/science/signs/drawing';
import { Drawn } from './drawn.tsx';

interface SignDrawingProps {
  readonly sign: string;
  readonly width: number;
  readonly name: string;
}

/** A sign as the one drawing shows it; nothing for a sign of a newer version that this program cannot draw. */
export function SignDrawing({ sign, width, name }: SignDrawingProps) {
  return isSign(sign) ? <Drawn drawing={drawSign(drawingOf[sign])} width={width} name={name} /> : null;
}
