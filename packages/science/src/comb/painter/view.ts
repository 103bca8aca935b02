/** How the comb plane is seen: a pin-hole camera over a plane, and a gentle bend of the rows. Lengths in pitches. */
import type { PainterSettings } from './settings.ts';

export interface View {
  /** From a pixel to the place on the comb (rows straight again): [u, v], or undefined above the horizon. */
  toComb(x: number, y: number): [number, number] | undefined;
  /** From a place on the comb to the pixel. */
  toPicture(u: number, v: number): [number, number];
  /** Sideways way of the line of sight per pitch of depth, at a place on the comb. */
  slant(u: number, v: number): [number, number];
}

/** @param seed decides the bend */
export function viewOf(settings: PainterSettings, phase: number): View {
  const { width, height, pitch, turn, tiltX, tiltY, reach, bend, bendLength } = settings;
  const spanned = Math.max(width, height) / pitch;
  const far = reach * spanned;
  const focal = far * pitch;
  const ct = Math.cos(turn);
  const st = Math.sin(turn);
  const cx = Math.cos(tiltX);
  const sx = Math.sin(tiltX);
  const cy = Math.cos(tiltY);
  const sy = Math.sin(tiltY);
  // Comb axes in camera coordinates: turn in the plane, then tilt about x, then about y.
  const axis = (u: number, v: number, w: number): [number, number, number] => {
    const x0 = ct * u - st * v;
    const y0 = st * u + ct * v;
    const y1 = cx * y0 - sx * w;
    const z1 = sx * y0 + cx * w;
    return [cy * x0 + sy * z1, y1, -sy * x0 + cy * z1];
  };
  const e1 = axis(1, 0, 0);
  const e2 = axis(0, 1, 0);
  const e3 = axis(0, 0, 1);
  // Camera at the origin looks along +z; the comb's middle is at (0, 0, far). e3 points away from the camera: depth.
  const middleX = (width - 1) / 2;
  const middleY = (height - 1) / 2;
  // Camera place in comb coordinates: minus the middle, resolved on the axes.
  const eyeU = -far * e1[2];
  const eyeV = -far * e2[2];
  const eyeW = -far * e3[2];
  const k = (2 * Math.PI) / bendLength;
  const bendU = (u: number, v: number): number => bend * Math.sin(k * (0.8 * v + 0.3 * u) + phase);
  const bendV = (u: number, v: number): number => bend * Math.sin(k * (0.9 * u - 0.2 * v) + 2.1 * phase + 1);
  return {
    toComb(x, y) {
      const dx = (x - middleX) / focal;
      const dy = (y - middleY) / focal;
      const du = dx * e1[0] + dy * e1[1] + e1[2];
      const dv = dx * e2[0] + dy * e2[1] + e2[2];
      const dw = dx * e3[0] + dy * e3[1] + e3[2];
      if (dw < 0.05) return undefined;
      const t = -eyeW / dw;
      const u = eyeU + t * du;
      const v = eyeV + t * dv;
      return [u + bendU(u, v), v + bendV(u, v)];
    },
    toPicture(lu, lv) {
      let u = lu;
      let v = lv;
      for (let round = 0; round < 12; round++) {
        const nu = lu - bendU(u, v);
        const nv = lv - bendV(u, v);
        u = nu;
        v = nv;
      }
      const x = u * e1[0] + v * e2[0];
      const y = u * e1[1] + v * e2[1];
      const z = far + u * e1[2] + v * e2[2];
      return [middleX + (focal * x) / z, middleY + (focal * y) / z];
    },
    slant(u, v) {
      return [(u - eyeU) / -eyeW, (v - eyeV) / -eyeW];
    },
  };
}
