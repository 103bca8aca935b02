/*
 * What the painter may vary, in the ranges measured on real pictures (see the room's README; those pictures were few, so
 * the ranges are a lower bound). Two families that share no wax, bee, light or camera choice: `tuning` is what reader
 * and classifier may be fitted on, `held-out` only ever measures them.
 */
import { type Chance, seeded } from '../../random/seeded.ts';

export type Colour = readonly [number, number, number];

/** One comb palette, sRGB 0 to 255. */
export interface Wax {
  readonly name: string;
  /** Mouth rims. */
  readonly rim: Colour;
  /** Walls and base inside the cell. */
  readonly inside: Colour;
  /** Light that comes through from behind, 0 (old comb) to 1 (new comb against the sky). */
  readonly glow: number;
  /** Worker cappings. */
  readonly capping: Colour;
  /** Honey cappings, dry and wet. */
  readonly honey: Colour;
  readonly wet: Colour;
  /** Rim half thickness, pitches. */
  readonly wall: number;
}

export interface BeeLook {
  readonly band: Colour;
  readonly stripe: Colour;
  readonly thorax: Colour;
  readonly hair: number;
}

export type FrameView = 'comb only' | 'one edge' | 'whole frame';

/** Everything that decides a painted picture but its seed. Angles in radians, lengths in pitches unless said. */
export interface PainterSettings {
  readonly width: number;
  readonly height: number;
  /** Distance between cell centres at the middle of the picture, pixels. */
  readonly pitch: number;
  readonly turn: number;
  /** Tilt of the comb about the picture's horizontal and vertical axis. */
  readonly tiltX: number;
  readonly tiltY: number;
  /** Distance of the camera over the width it sees: small is strong perspective. */
  readonly reach: number;
  readonly jitter: number;
  readonly bend: number;
  readonly bendLength: number;
  readonly depth: number;
  readonly slope: number;
  readonly wax: Wax;
  /** How far the base of empty cells is whitish or grey against the walls, 0 to 1 (new comb over foundation). */
  readonly paleBase: number;
  /** How far one sees through the base, 0 to 1: walls of the cells behind, soft light and dark places. */
  readonly seeThrough: number;
  /** How much the inner walls facing the light are brighter than those turned from it, 0 to 1. */
  readonly wallFacing: number;
  /** Share of open cells with one or two small glints on a floor that is not under liquid. */
  readonly glints: number;
  readonly bees: BeeLook;
  /** Share of the comb covered by bees, 0 to 0.9. */
  readonly beeCover: number;
  /** Share of bees standing head-down in a cell. */
  readonly headDown: number;
  readonly glove: boolean;
  readonly brush: boolean;
  readonly frame: FrameView;
  /** What the comb holds. */
  readonly content: {
    readonly kind: 'brood nest' | 'all sealed' | 'empty comb' | 'stores' | 'mixed';
    /** Share of cells in sealed brood left open. */
    readonly missed: number;
    readonly pollenPatches: number;
    readonly drone: number;
    /** Share of sealed brood cells with a sick capping. */
    readonly sick: number;
    readonly cappingSpread: number;
    readonly honeyWalls: number;
    readonly nectarShine: number;
    /** How clear nectar is, 0 (amber, as in the palette) to 1 (water: only its edge and its glint show). */
    readonly nectarClear: number;
    /** How far pollen strays from its palette, 0 to 1. */
    readonly pollenSpread: number;
    readonly scale: number;
  };
  readonly light: {
    readonly azimuth: number;
    /** Height of the light above the comb plane. */
    readonly height: number;
    /** Share of light that is direct. */
    readonly direct: number;
    readonly gradient: number;
    /** Factor of a hard-edged cast shadow, 1 for none. */
    readonly shadow: number;
    readonly shadowWidth: number;
    readonly exposure: number;
    readonly cast: Colour;
  };
  readonly camera: {
    /** Standard deviation of the blur in pixels, and how much more at the far side. */
    readonly blur: number;
    readonly shallow: number;
    readonly noise: number;
    readonly sharpen: number;
    /** JPEG quality 1 to 100; 0 for none. */
    readonly jpeg: number;
    readonly contrast: number;
    /** Colour as the camera renders it: 1 as it is, 0 grey, above 1 gaudy. */
    readonly saturation: number;
  };
}

export type Family = 'tuning' | 'held-out';

interface FamilyLooks {
  readonly waxes: readonly Wax[];
  readonly bees: readonly BeeLook[];
  readonly azimuths: readonly (readonly [number, number])[];
  readonly casts: readonly Colour[];
  readonly jpeg: readonly number[];
  readonly contrast: readonly [number, number];
}

const looks: Record<Family, FamilyLooks> = {
  tuning: {
    waxes: [
      {
        name: 'white new',
        rim: [250, 216, 110],
        inside: [236, 190, 70],
        glow: 0.85,
        capping: [226, 180, 110],
        honey: [247, 238, 210],
        wet: [205, 150, 90],
        wall: 0.085,
      },
      {
        name: 'greenish new',
        rim: [200, 186, 128],
        inside: [165, 143, 80],
        glow: 0.5,
        capping: [205, 160, 95],
        honey: [238, 226, 190],
        wet: [190, 140, 85],
        wall: 0.075,
      },
      {
        name: 'tan',
        rim: [190, 138, 72],
        inside: [120, 80, 40],
        glow: 0.15,
        capping: [193, 138, 65],
        honey: [236, 212, 160],
        wet: [180, 120, 65],
        wall: 0.06,
      },
      {
        name: 'brown',
        rim: [130, 86, 46],
        inside: [64, 40, 24],
        glow: 0.03,
        capping: [170, 116, 58],
        honey: [214, 180, 128],
        wet: [150, 98, 55],
        wall: 0.055,
      },
      {
        name: 'old',
        rim: [74, 52, 36],
        inside: [34, 25, 20],
        glow: 0,
        capping: [122, 84, 48],
        honey: [180, 146, 104],
        wet: [120, 82, 52],
        wall: 0.06,
      },
    ],
    bees: [
      { band: [196, 120, 50], stripe: [52, 36, 28], thorax: [104, 80, 58], hair: 0.5 },
      { band: [150, 96, 48], stripe: [34, 26, 22], thorax: [86, 70, 56], hair: 0.8 },
      { band: [96, 70, 46], stripe: [26, 22, 20], thorax: [78, 66, 54], hair: 0.7 },
    ],
    azimuths: [
      [0.2, 1.3],
      [2.2, 3.6],
      [4.6, 5.6],
    ],
    casts: [
      [1, 1, 1],
      [1.06, 1, 0.86],
      [1.12, 1, 0.74],
      [0.94, 1, 1.1],
      [0.97, 1.04, 0.95],
    ],
    jpeg: [45, 62, 78, 88, 0],
    contrast: [0.85, 1.35],
  },
  'held-out': {
    waxes: [
      {
        name: 'lemon new',
        rim: [244, 228, 150],
        inside: [222, 198, 96],
        glow: 0.7,
        capping: [218, 170, 98],
        honey: [250, 244, 226],
        wet: [196, 142, 84],
        wall: 0.08,
      },
      {
        name: 'honey-brown',
        rim: [164, 116, 60],
        inside: [92, 60, 30],
        glow: 0.08,
        capping: [182, 126, 60],
        honey: [228, 200, 146],
        wet: [164, 110, 58],
        wall: 0.058,
      },
      {
        name: 'chocolate',
        rim: [96, 66, 42],
        inside: [44, 30, 22],
        glow: 0.01,
        capping: [146, 100, 54],
        honey: [196, 162, 116],
        wet: [134, 90, 54],
        wall: 0.062,
      },
    ],
    bees: [
      { band: [172, 106, 46], stripe: [42, 30, 24], thorax: [94, 74, 56], hair: 0.6 },
      { band: [118, 82, 48], stripe: [30, 24, 22], thorax: [80, 66, 50], hair: 0.9 },
    ],
    azimuths: [
      [1.4, 2.1],
      [3.7, 4.5],
      [5.7, 6.2],
    ],
    casts: [
      [1.03, 1, 0.93],
      [1.09, 1.01, 0.8],
      [0.92, 0.99, 1.06],
    ],
    jpeg: [54, 70, 84],
    contrast: [0.9, 1.25],
  },
};

/** What a caller may fix; the rest is drawn. */
export type FixedSettings = {
  readonly [K in keyof PainterSettings]?: PainterSettings[K] extends object
    ? PainterSettings[K] extends readonly unknown[] | Wax | BeeLook
      ? PainterSettings[K]
      : Partial<PainterSettings[K]>
    : PainterSettings[K];
};

/**
 * Draws settings of a family.
 *
 * @param seed whole number; family and seed together decide everything
 * @param fixed values to use instead of the drawn ones (for degradation curves)
 */
export function drawSettings(family: Family, seed: number, fixed: FixedSettings = {}): PainterSettings {
  const chance: Chance = seeded(seed * 7919 + (family === 'tuning' ? 17 : 4_000_037));
  const look = looks[family];
  const pitch = fixed.pitch ?? ratioBetween(chance, 8, 62);
  // Keep pictures near a third of a megapixel, so that a close view holds about a hundred cells and a far one thousands.
  const across = Math.min(1000, Math.max(520, pitch * 16));
  const [low, high] = oneOf(chance, look.azimuths);
  const level = chance.uniform() < 0.5;
  const kind = oneOf(chance, [
    'brood nest',
    'brood nest',
    'all sealed',
    'empty comb',
    'stores',
    'mixed',
    'mixed',
  ] as const);
  const frameDraw = chance.uniform();
  const drawn: PainterSettings = {
    width: Math.round(across),
    height: Math.round(across * chance.between(0.62, 0.8)),
    pitch,
    turn: level ? chance.between(-0.06, 0.06) : chance.between(-Math.PI, Math.PI),
    tiltX: chance.between(-0.5, 0.5) * (chance.uniform() < 0.5 ? 1 : 0.3),
    tiltY: chance.between(-0.35, 0.35) * (chance.uniform() < 0.5 ? 1 : 0.3),
    reach: chance.between(1.3, 4),
    jitter: chance.between(0.02, 0.06),
    bend: chance.between(0, 0.6),
    bendLength: chance.between(14, 50),
    depth: chance.between(0.7, 2.2),
    slope: chance.between(-0.25, 0.25),
    wax: varied(oneOf(chance, look.waxes), chance),
    paleBase: chance.uniform() < 0.5 ? 0 : chance.between(0.1, 0.7),
    seeThrough: 0,
    wallFacing: 0,
    glints: 0,
    bees: oneOf(chance, look.bees),
    beeCover: chance.uniform() < 0.25 ? 0 : chance.between(0, 0.5) * (chance.uniform() < 0.6 ? 0.5 : 1),
    headDown: chance.between(0, 0.4),
    glove: chance.uniform() < 0.15,
    brush: chance.uniform() < 0.08,
    frame: frameDraw < 0.6 ? 'comb only' : frameDraw < 0.85 ? 'one edge' : 'whole frame',
    content: {
      kind,
      missed: chance.uniform() < 0.5 ? chance.between(0.02, 0.12) : chance.between(0.1, 0.5),
      pollenPatches: Math.floor(chance.between(0, 6)),
      drone: chance.uniform() < 0.65 ? 0 : chance.between(0.02, 0.5),
      sick: chance.uniform() < 0.5 ? 0 : chance.between(0.02, 0.3),
      cappingSpread: chance.between(0.06, 0.2),
      honeyWalls: chance.between(0.05, 0.7),
      nectarShine: chance.between(0.2, 1),
      nectarClear: 0,
      pollenSpread: 0,
      scale: chance.uniform() < 0.7 ? 0 : chance.between(0.02, 0.3),
    },
    light: {
      azimuth: chance.between(low, high),
      height: chance.between(0.5, 1.3),
      direct: chance.between(0.1, 0.75),
      gradient: chance.between(0, 0.3),
      shadow: chance.uniform() < 0.7 ? 1 : chance.between(0.3, 0.65),
      shadowWidth: chance.between(0.05, 0.5),
      exposure: chance.between(0.8, 1.25),
      cast: oneOf(chance, look.casts),
    },
    camera: {
      blur: pitch * chance.between(0.005, 0.05) + chance.between(0.25, 0.55),
      shallow: chance.uniform() < 0.7 ? 0 : chance.between(0, 0.06) * pitch,
      noise: chance.between(0.5, 6),
      sharpen: chance.uniform() < 0.5 ? 0 : chance.between(0.2, 0.9),
      jpeg: oneOf(chance, look.jpeg),
      contrast: chance.between(look.contrast[0], look.contrast[1]),
      saturation: 1,
    },
  };
  const meant = family === 'tuning' ? widened(drawn, chance) : drawn;
  return {
    ...meant,
    ...fixed,
    content: { ...meant.content, ...fixed.content },
    light: { ...meant.light, ...fixed.light },
    camera: { ...meant.camera, ...fixed.camera },
  };
}

/**
 * Two tuning combs in three go beyond the ranges above, each in some ways: what is learnt should rest on what stays the
 * same among them. Six real pictures asked for these ways (the room's README): pale comb seen through, floors as bright as
 * rims, thick rims, one dark inner wall per cell, clear nectar known by its glint, glints on bare floors, casts and
 * gaudiness, clipping to 15 %, strong halos and coarse JPEG.
 */
function widened(drawn: PainterSettings, chance: Chance): PainterSettings {
  if (chance.uniform() < 0.33) return drawn;
  const some = (): boolean => chance.uniform() < 0.5;
  // Two of the six real pictures show new comb, empty and pale; by chance alone hardly any painted one would.
  const newComb = chance.uniform() < 0.3;
  let wax = newComb ? varied(oneOf(chance, looks.tuning.waxes.slice(0, 2)), chance) : drawn.wax;
  if (!newComb && some()) wax = between(wax, oneOf(chance, looks.tuning.waxes), chance.uniform());
  if (newComb || some()) wax = pale(wax, chance);
  // New comb is the one seen through; old comb lets nothing pass.
  const clear = Math.min(1, 2 * wax.glow);
  return {
    ...drawn,
    wax,
    depth: some() ? chance.between(0.5, 2.6) : drawn.depth,
    slope: some() ? chance.between(-0.6, 0.6) : drawn.slope,
    seeThrough: clear * (some() ? chance.between(0.2, 1) : 0),
    wallFacing: some() ? chance.between(0.1, 0.8) : 0,
    glints: some() ? chance.between(0.03, 0.5) : 0,
    bees: some() ? strange(drawn.bees, chance) : drawn.bees,
    content: {
      ...drawn.content,
      ...(newComb ? { kind: 'empty comb', pollenPatches: Math.min(1, drawn.content.pollenPatches) } : {}),
      nectarClear: some() ? clear * chance.between(0.2, 1) : 0,
      pollenSpread: some() ? chance.uniform() : 0,
    },
    light: {
      ...drawn.light,
      height: some() ? chance.between(0.35, 1.45) : drawn.light.height,
      direct: some() ? chance.between(0, 0.9) : drawn.light.direct,
      exposure: some() ? chance.between(0.6, 1.8) : drawn.light.exposure,
      cast: some()
        ? [chance.between(0.85, 1.15), chance.between(0.95, 1.05), chance.between(0.5, 1.2)]
        : drawn.light.cast,
    },
    camera: {
      ...drawn.camera,
      sharpen: some() ? chance.between(0, 1.6) : drawn.camera.sharpen,
      jpeg: some() ? Math.floor(chance.between(30, 97)) : drawn.camera.jpeg,
      contrast: some() ? chance.between(0.7, 1.6) : drawn.camera.contrast,
      saturation: some() ? chance.between(0.4, 1.5) : 1,
    },
  };
}

/** Bees lighter or darker, browner or yellower, than their palette. */
function strange(bees: BeeLook, chance: Chance): BeeLook {
  const shift = (c: Colour): Colour => {
    const light = Math.exp(0.25 * chance.normal());
    const warm = 0.15 * chance.normal();
    return [Math.min(255, c[0] * light * (1 + warm)), Math.min(255, c[1] * light), c[2] * light * (1 - warm)];
  };
  return { band: shift(bees.band), stripe: shift(bees.stripe), thorax: shift(bees.thorax), hair: bees.hair };
}

/** A wax between two palettes. */
function between(one: Wax, other: Wax, share: number): Wax {
  const mix = (a: number, b: number): number => a + (b - a) * share;
  const blend = (a: Colour, b: Colour): Colour => [mix(a[0], b[0]), mix(a[1], b[1]), mix(a[2], b[2])];
  return {
    name: one.name,
    rim: blend(one.rim, other.rim),
    inside: blend(one.inside, other.inside),
    glow: mix(one.glow, other.glow),
    capping: blend(one.capping, other.capping),
    honey: blend(one.honey, other.honey),
    wet: blend(one.wet, other.wet),
    wall: mix(one.wall, other.wall),
  };
}

/** A wax whose insides come near to its rims, and whose rims may be thick: open does not mean dark. */
function pale(wax: Wax, chance: Chance): Wax {
  const near = chance.between(0.2, 0.9);
  const tint = (): number => Math.exp(0.07 * chance.normal());
  const toRim = (a: number, b: number): number => Math.min(255, (a + (b - a) * near) * tint());
  return {
    ...wax,
    inside: [toRim(wax.inside[0], wax.rim[0]), toRim(wax.inside[1], wax.rim[1]), toRim(wax.inside[2], wax.rim[2])],
    glow: Math.min(1, wax.glow + chance.between(0, 0.5)),
    wall: Math.min(0.14, wax.wall * chance.between(0.9, 1.7)),
  };
}

/** A wax a little lighter or darker, redder or paler, than its palette: no two combs are alike. */
function varied(wax: Wax, chance: Chance): Wax {
  const light = Math.exp(0.14 * chance.normal());
  const warm = 0.06 * chance.normal();
  const shift = (c: Colour): Colour => [
    Math.min(255, c[0] * light * (1 + warm)),
    Math.min(255, c[1] * light),
    Math.min(255, c[2] * light * (1 - 1.5 * warm)),
  ];
  return {
    ...wax,
    rim: shift(wax.rim),
    inside: shift(wax.inside),
    capping: shift(wax.capping),
    honey: shift(wax.honey),
    wet: shift(wax.wet),
    glow: Math.max(0, Math.min(1, wax.glow * chance.between(0.6, 1.25))),
    wall: wax.wall * chance.between(0.8, 1.25),
  };
}

/** Evenly between two values on the scale of ratios. */
function ratioBetween(chance: Chance, low: number, high: number): number {
  return low * Math.exp(Math.log(high / low) * chance.uniform());
}

/** One of a list, each as likely. */
export function oneOf<T>(chance: Chance, list: readonly T[]): T {
  return list[chance.integer(list.length)] as T;
}
