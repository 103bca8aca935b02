import type { Ink, Wash } from './drawing.ts';

/**
 * The inks and washes on paper. Brood colours are facts and stay the same in every theme, so a dark screen lays a
 * drawing on a light plate. Each step is also a step of grey, so the drawing reads without colour.
 * State colours: Okabe and Ito, Color Universal Design (2008).
 */
export const inks: Record<Ink, string> = { ink: '#1B1A17', faint: '#6F6959', paper: '#FBF8F1', none: 'none' };

export const washes: Record<Wash, string> = {
  none: 'none',
  ink: '#1B1A17',
  paper: '#FBF8F1',
  wax: '#E3C58A',
  'darkened wax': '#8A6234',
  pearl: '#FFFFFF',
  yellow: '#EBD58C',
  brown: '#9A6233',
  dark: '#33261C',
  white: '#FFFFFF',
  grey: '#A9A69D',
  pollen: '#E0A63C',
  nectar: '#F3DFA6',
  mite: '#7C2F1C',
  'signs seen': '#E69F00',
  suspect: '#D55E00',
};
