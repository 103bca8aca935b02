import type { CellSectionParameters, CombSectionParameters } from './cell-section-parameters.ts';
import { type Drawing, type Ink, type Shape, type Wash, weights } from './drawing.ts';
import { Pen, type Placement, placed, within } from './pen.ts';

/*
 * The cell in section. Own coordinates of one cell: u runs from the mouth (0) to the base (34), v from the upper wall
 * (0) to the lower wall (18). The cell is then turned by 11 degrees, since cells rise from base to mouth: 9 to 13
 * degrees (The Beekeeper's Handbook and Winston, The Biology of the Honey Bee p. 81, both as quoted by TILT in
 * packages/sources). Width to depth is drawn 1 : 1.9 where nature has about 1 : 2.2, so that the content shows at 40 px.
 */
const depth = 34;
const width = 18;
const tilt = 11;
const side = 48;

type Colour = NonNullable<CellSectionParameters['colour']>;

/** Lines upon a body: dark bodies need light lines. */
const lineUpon = (colour: Colour): Ink => (colour === 'dark' || colour === 'brown' ? 'paper' : 'ink');

/** Draws a cut through the comb: one to three cells, mouth left, lying a little uphill. */
export function drawCombSection(parameters: CombSectionParameters): Drawing {
  const { cells } = parameters;
  if (cells.length < 1 || cells.length > 3) {
    throw new RangeError(`a comb section shows 1 to 3 cells, not ${cells.length}`);
  }
  const shapes: Shape[] = [];
  const { scale, x, y } = layOut(parameters);
  const pitch = width * scale;

  cells.forEach((cell, index) => {
    const own = within(placed(x, y + (index - (cells.length - 1) / 2) * pitch, tilt, scale), (u, v) => ({
      x: u - depth / 2,
      y: v - width / 2,
    }));
    shapes.push(...drawCell(cell, own));
  });
  if (parameters.smell) shapes.push(...drawSmell(parameters.smell));
  if (parameters.floor) shapes.push(...drawFloor(parameters.floor));
  if (parameters.bees) shapes.push(...drawBees(parameters.bees));
  return { width: side, height: side, shapes, labels: [] };
}

/** One cell fills the plate; a row of cells, a thread, or things around the cell make it smaller. */
function layOut({ cells, smell, floor, bees }: CombSectionParameters): { scale: number; x: number; y: number } {
  if (cells.length === 3) return { scale: 0.73, x: bees ? 28.5 : 26, y: 24 };
  if (cells.length === 2) return { scale: 0.92, x: bees ? 30 : 26, y: 24 };
  const only = cells[0] as CellSectionParameters;
  if (only.threadMillimetres !== undefined) return { scale: 0.82, x: 32, y: 32 };
  if (smell) return { scale: 0.9, x: 30.5, y: 27 };
  if (floor) return { scale: 1.05, x: 25, y: 18 };
  if (only.capping === 'drone dome') return { scale: 1.06, x: 28, y: 24 };
  return { scale: 1.2, x: 25, y: 24 };
}

/** Draws one cell on its own. */
export function drawCellSection(cell: CellSectionParameters): Drawing {
  return drawCombSection({ cells: [cell] });
}

function shape(role: string, d: string, stroke: Ink, fill: Wash, weight: number, dash?: readonly number[]): Shape {
  return dash ? { d, stroke, fill, weight, role, dash } : { d, stroke, fill, weight, role };
}

function drawCell(cell: CellSectionParameters, own: Placement): Shape[] {
  const shapes: Shape[] = [];
  const pen = () => new Pen(own);
  const rim = cell.raisedRim ? 2.2 : 0;

  // The tube: the ground first, so that nothing shows through; the walls last, so that nothing covers them.
  const ground = pen()
    .move(0, 0)
    .line([depth - 3.5, 0], [depth, width / 2], [depth - 3.5, width], [0, width])
    .close();
  shapes.push(shape('ground', ground.d, 'none', 'paper', 0));
  shapes.push(...drawContent(cell, own));
  shapes.push(...drawScale(cell, own));
  if (cell.tongue) {
    const tongue = pen().through([
      [12, width - 4.5],
      [11, width / 2],
      [9.6, 1],
    ]);
    shapes.push(shape('tongue', tongue.d, 'ink', 'none', weights.inner));
  }
  if (cell.moth) shapes.push(...drawMoth(own));
  shapes.push(...drawMites(cell, own));

  const walls = pen()
    .move(0, 0)
    .line([depth - 3.5, 0], [depth, width / 2], [depth - 3.5, width], [0, width]);
  shapes.push(shape('walls', walls.d, 'ink', 'none', weights.main));
  if (rim) {
    const lips = pen()
      .move(1, 0)
      .curve([-0.5, 0], [-1, -0.6], [-1, -rim])
      .move(1, width)
      .curve([-0.5, width], [-1, width + 0.6], [-1, width + rim]);
    shapes.push(shape('rim', lips.d, 'ink', 'none', weights.main));
  }
  shapes.push(...drawCapping(cell, own));
  if (cell.threadMillimetres !== undefined) shapes.push(...drawThread(cell.threadMillimetres, own));
  return shapes;
}

function drawCapping(cell: CellSectionParameters, own: Placement): Shape[] {
  const wax: Wash = cell.cappingDark ? 'darkened wax' : 'wax';
  const thickness = 2.6;
  // The capping from v = top to v = bottom; as a whole it bulges out of the mouth (negative) or into the cell.
  const plate = (bulge: number, top = 0, bottom = width, ragged = 0): Shape => {
    const outer: [number, number][] = [];
    const inner: [number, number][] = [];
    for (let i = 0; i <= 6; i += 1) {
      const v = top + ((bottom - top) * i) / 6;
      const u = 0.4 + bulge * 4 * (v / width) * (1 - v / width);
      outer.push([u, v]);
      inner.push([u + thickness, v]);
    }
    const path = new Pen(own).move(...(outer[0] as [number, number])).line(...outer.slice(1));
    if (ragged && bottom < width) path.line([(outer[6] as [number, number])[0] + thickness * 0.6, bottom + ragged]);
    path.line(...inner.reverse());
    if (ragged && top > 0) path.line([(outer[0] as [number, number])[0] + thickness * 0.6, top - ragged]);
    return shape('capping', path.close().d, 'ink', wax, weights.inner);
  };
  switch (cell.capping ?? 'none') {
    case 'none':
      return [];
    case 'domed':
      return [plate(-3.6)];
    case 'flat':
      return [plate(0)];
    case 'sunken':
      return [plate(5)];
    case 'drone dome':
      return [plate(-8.4)];
    case 'perforated':
      return [plate(4, 0, 6.6), plate(4, 10.6, width)];
    case 'torn':
      return [plate(-2, 0, 2.8, 1.6), plate(-2, 13.4, width, 1.9)];
  }
}

function drawContent(cell: CellSectionParameters, own: Placement): Shape[] {
  const content = cell.content ?? 'empty';
  const colour: Colour = cell.colour ?? 'pearl';
  const line = lineUpon(colour);
  const pen = () => new Pen(own);
  const body = (d: string): Shape => shape('body', d, 'ink', colour, weights.inner);
  const mark = (d: string, weight: number = weights.inner): Shape => shape('mark', d, line, 'none', weight);
  const shapes: Shape[] = [];

  switch (content) {
    case 'empty':
      break;

    case 'egg': {
      const stands: [number, number, number][] = [
        [33, 9, 180],
        [19, 17, -70],
        [12.6, 1, 75],
        [26, 1, 100],
      ];
      for (const [u, v, turn] of stands.slice(0, Math.max(1, Math.min(4, cell.eggs ?? 1)))) {
        const egg = within(own, placed(u, v, turn));
        const d = new Pen(egg).through(
          [
            [0, -1.3],
            [4, -1.8],
            [7.6, 0],
            [4, 1.8],
            [0, 1.3],
          ],
          true,
        ).d;
        shapes.push(shape('body', d, 'ink', 'white', weights.inner));
      }
      break;
    }

    case 'coiled': {
      if (!cell.unfed) {
        const food = pen()
          .move(depth - 3.5, 0)
          .line([depth, width / 2], [depth - 3.5, width], [depth - 12, width])
          .curve([depth - 8, width - 3], [depth - 6, 6], [depth - 3.5, 0])
          .close();
        shapes.push(shape('food', food.d, 'none', 'nectar', 0));
      }
      // A crescent on the base, its hollow toward the mouth.
      const r = cell.unfed ? 6 : 7.4;
      const inner = cell.unfed ? 3.8 : 2.2;
      const c: readonly [number, number] = [23.8, 9.2];
      shapes.push(body(crescent(pen(), c, r, inner, 38, 322)));
      if (!cell.unfed) shapes.push(mark(spokes(pen(), c, inner + 0.9, r - 0.6, [95, 140, 180, 220, 265])));
      if (cell.tracheae) shapes.push(tracheae(pen(), c, (r + inner) / 2, line));
      if (cell.watery) shapes.push(...drops(own, 15, 16));
      break;
    }

    case 'twisted': {
      const spine: [number, number][] = [
        [6, 4.6],
        [10, 3.8],
        [13.6, 7.4],
        [17, 13],
        [21.5, 13.6],
        [24.6, 9],
        [28.6, 5.6],
      ];
      shapes.push(body(ribbon(pen(), spine, [1.4, 2.6, 3, 3.1, 3, 2.8, 1.5])));
      shapes.push(mark(crossings(pen(), spine, [1, 2, 3, 4, 5], 1.9)));
      if (cell.tracheae) {
        const along = pen().through(spine.map(([u, v]) => [u, v - 0.2] as const));
        shapes.push(shape('tracheae', along.d, line === 'ink' ? 'faint' : 'paper', 'none', weights.hair));
      }
      break;
    }

    case 'stretched': {
      const lifted = cell.headRaised ? -6.5 : 0;
      const outline = pen()
        .move(3.2, 13 + lifted)
        .curve([3.2, 8.6 + lifted], [8, 6.8 + lifted * 0.6], [15, 6.6])
        .curve([22, 6.4], [29, 7.4], [30.6, 12])
        .curve([31.2, 15.4], [29.6, 16.6], [26, 16.8])
        .line([13, 16.8])
        .curve([8, 16.8], [3.2, 16.6 + lifted], [3.2, 13 + lifted])
        .close();
      if (cell.fluff) shapes.push(...fluff(own));
      shapes.push(body(outline.d));
      shapes.push(
        mark(
          pen()
            .move(10, 9 + lifted * 0.3)
            .curve([9, 11], [9, 13], [10, 15.4])
            .move(16, 8.6)
            .curve([15, 11], [15, 13], [16, 15.4])
            .move(22, 8.8)
            .curve([21, 11], [21, 13], [22, 15.4]).d,
        ),
      );
      if (cell.headRaised) {
        const head = pen()
          .move(3.2, 13 + lifted)
          .curve([3.2, 8.6 + lifted], [6, 7.4 + lifted], [9, 6.8 + lifted * 0.75])
          .curve([8, 10 + lifted], [7, 13], [6.6, 15])
          .curve([4, 14], [3.2, 12], [3.2, 13 + lifted])
          .close();
        shapes.push(shape('head', head.d, 'ink', 'dark', weights.inner));
      }
      break;
    }

    case 'slumped': {
      // Upper edge sags, no segment left.
      const outline = pen()
        .move(2.4, width)
        .curve([3, 13.2], [6, 12], [9, 12.6])
        .curve([13, 13.6], [15, 11], [19, 10.6])
        .curve([23, 10.2], [26.4, 12], [29.6, 9.4])
        .curve([31.4, 8.2], [32.6, 8.2], [33.4, 10.4])
        .line([depth - 3.5, width])
        .close();
      shapes.push(body(outline.d));
      if (cell.watery) shapes.push(...drops(own, 8, 8));
      break;
    }

    case 'pupa': {
      const abdomen = pen()
        .move(16.6, 6)
        .curve([22, 2.6], [30, 5], [31, 10])
        .curve([30, 14.6], [22, 16], [16.6, 13.4])
        .close();
      const thorax = pen().ellipse(13.4, 9.7, 4.4, 5.1);
      const head = pen().ellipse(6.6, 9.9, 3.7, 4.7);
      shapes.push(body(abdomen.d), body(thorax.d), body(head.d));
      shapes.push(
        mark(
          pen()
            .move(21, 5.4)
            .curve([19.8, 8], [19.8, 11.6], [21, 14.2])
            .move(25.4, 5.6)
            .curve([24.4, 8], [24.4, 11.4], [25.4, 14]).d,
        ),
      );
      shapes.push(shape('eye', pen().ellipse(5.5, 9, 1.5, 2.1).d, 'none', colour === 'dark' ? 'paper' : 'ink', 0));
      break;
    }

    case 'mummy': {
      const outline = pen()
        .move(7, 11)
        .line(
          [8.4, 6.6],
          [13, 5],
          [18, 6],
          [23.5, 5],
          [28, 7.6],
          [28.6, 11.6],
          [25, 14.6],
          [19, 13.8],
          [13, 15.2],
          [8.4, 14],
        )
        .close();
      if (cell.fluff) shapes.push(...fluff(own));
      shapes.push(body(outline.d));
      shapes.push(mark(pen().move(13, 5).line([14.4, 9], [13, 15.2]).move(21, 5.6).line([19.6, 9.6], [21.4, 13.9]).d));
      if (cell.powder) {
        const dust = pen();
        for (const [u, v] of [
          [9.4, 8.6],
          [11.6, 7.4],
          [10.6, 11.6],
          [15.8, 12.6],
          [17, 8],
          [18.4, 10.4],
          [23, 7.2],
          [24.4, 12.4],
          [26.4, 9.4],
        ] as const) {
          dust.ellipse(u, v, 0.8);
        }
        shapes.push(shape('powder', dust.d, 'none', line === 'ink' ? 'ink' : 'paper', 0));
      }
      break;
    }

    case 'sac': {
      // The unshed skin with its fluid, and within it the larva, head up toward the mouth.
      const skin = pen()
        .move(2.6, 5.4)
        .curve([3.4, 2.4], [7.6, 2.2], [10, 4.6])
        .curve([14, 8], [20, 7.4], [26, 7.8])
        .curve([31, 8.2], [32.4, 14.6], [28.6, 16.8])
        .line([12, 16.8])
        .curve([5.6, 16.8], [1.8, 10.6], [2.6, 5.4])
        .close();
      const larva = pen()
        .move(4.6, 6.2)
        .curve([5.2, 4.2], [7.6, 4.2], [9, 6.4])
        .curve([13, 10.4], [19, 9.4], [25, 10])
        .curve([28.6, 10.4], [29, 13.6], [26.4, 14.6])
        .line([13.4, 14.6])
        .curve([7.6, 14.4], [3.8, 9.8], [4.6, 6.2])
        .close();
      const head = pen()
        .move(4.6, 6.2)
        .curve([5.2, 4.2], [7.6, 4.2], [9, 6.4])
        .curve([9, 8.6], [7.6, 10], [6.4, 11])
        .curve([4.8, 9.4], [4.2, 7.8], [4.6, 6.2])
        .close();
      shapes.push(shape('skin', skin.d, 'ink', 'nectar', weights.inner));
      shapes.push(shape('body', larva.d, 'ink', colour === 'pearl' ? 'yellow' : colour, weights.hair));
      shapes.push(shape('head', head.d, 'none', 'dark', 0));
      break;
    }

    case 'dry': {
      const spine: [number, number][] = [
        [9, 12.4],
        [14, 14.2],
        [20, 13.4],
        [25.4, 14.2],
      ];
      shapes.push(body(ribbon(pen(), spine, [0.9, 1.7, 1.5, 0.8])));
      shapes.push(mark(crossings(pen(), spine, [1, 2], 1.1), weights.hair));
      break;
    }

    case 'pollen': {
      const packed = pen()
        .move(11, 0)
        .curve([13, 6], [13, 12], [11, width])
        .line([depth - 3.5, width], [depth, width / 2], [depth - 3.5, 0])
        .close();
      shapes.push(shape('body', packed.d, 'ink', 'pollen', weights.inner));
      shapes.push(
        shape(
          'mark',
          pen()
            .move(17.6, 2)
            .curve([19.4, 6], [19.4, 12], [17.6, 16])
            .move(24, 2)
            .curve([25.8, 6], [25.8, 12], [24, 16]).d,
          'ink',
          'none',
          weights.inner,
        ),
      );
      break;
    }

    case 'nectar': {
      // Fluids stand level in the world, whatever the tilt of the cell.
      const level = Math.tan((tilt * Math.PI) / 180);
      const surface = (u: number) => 4.2 + (depth - 8 - u) * level;
      const fluid = pen()
        .move(1.4, surface(1.4) + 1)
        .line([depth - 2, surface(depth - 2)], [depth, width / 2], [depth - 3.5, width], [1.4, width])
        .close();
      shapes.push(shape('body', fluid.d, 'ink', 'nectar', weights.inner));
      break;
    }
  }
  if (cell.shiny && content === 'stretched') {
    shapes.push(
      shape('shine', pen().move(12, 8.4).curve([17, 7.4], [22, 7.6], [26, 9.2]).d, 'paper', 'none', weights.main),
    );
  }
  return shapes;
}

function drawScale(cell: CellSectionParameters, own: Placement): Shape[] {
  const pen = () => new Pen(own);
  const colour: Wash = cell.colour && cell.colour !== 'pearl' ? cell.colour : 'dark';
  switch (cell.scale ?? 'none') {
    case 'none':
      return [];
    case 'lower wall': {
      // From just inside the mouth down to the base, thickest toward the base, glued all along.
      const d = pen()
        .move(2, width)
        .curve([4, width - 3.8], [10, width - 4], [18, width - 4.4])
        .curve([24, width - 4.8], [28, width - 6], [31.4, width - 9.4])
        .line([33.2, 11], [depth - 3.5, width])
        .close().d;
      return [shape('scale', d, 'ink', colour, weights.inner)];
    }
    case 'mouth': {
      const d = pen()
        .move(1, width - 0.8)
        .curve([0, 11.4], [2.4, 6.4], [6.6, 6])
        .curve([11, 5.8], [13, 10], [11, 13])
        .curve([9.4, 12.4], [9.6, 9.4], [7, 9.2])
        .curve([4.6, 9.2], [4.4, 13.6], [5.4, width - 0.8])
        .close().d;
      return [shape('scale', d, 'ink', colour, weights.inner)];
    }
    case 'rubbery': {
      const spine: [number, number][] = [
        [6, 15],
        [10.6, 11],
        [15.4, 13.4],
        [20, 8.6],
        [25.4, 10.4],
        [29, 6.6],
      ];
      return [shape('scale', ribbon(pen(), spine, [0.8, 2, 2.2, 2.2, 2, 0.8]), 'ink', colour, weights.inner)];
    }
    case 'loose': {
      const d = pen()
        .move(4.6, 6.4)
        .curve([9, 13], [22, 13.6], [28.6, 7.4])
        .curve([26, 17.8], [8, 17.4], [4.6, 6.4])
        .close().d;
      return [shape('scale', d, 'ink', colour, weights.inner)];
    }
  }
}

function drawMites(cell: CellSectionParameters, own: Placement): Shape[] {
  const stands: [number, number][] = [
    [20, 4.4],
    [11, 15.4],
    [27, 14.6],
  ];
  return stands
    .slice(0, Math.max(0, Math.min(3, cell.mites ?? 0)))
    .map(([u, v]) => shape('mite', new Pen(own).ellipse(u, v, 2.5, 1.8).d, 'paper', 'mite', weights.hair));
}

function drawMoth(own: Placement): Shape[] {
  const tunnel = new Pen(own).through([
    [1, 3.6],
    [8, 2.2],
    [15, 4],
    [23, 2],
    [30, 4],
  ]);
  const threads = new Pen(own).move(4, 1).line([9, 5]).move(12, 0.8).line([18, 5.2]).move(21, 0.8).line([27, 5]);
  const frass = new Pen(own);
  for (const [u, v] of [
    [4.6, 7.4],
    [7.8, 6.2],
    [6, 11.6],
  ] as const)
    frass.ellipse(u, v, 1.1);
  return [
    shape('silk', tunnel.d, 'faint', 'none', weights.inner),
    shape('silk', threads.d, 'faint', 'none', weights.hair),
    shape('frass', frass.d, 'none', 'ink', 0),
  ];
}

function drawThread(millimetres: number, own: Placement): Shape[] {
  if (!(millimetres >= 0 && millimetres <= 300)) {
    throw new RangeError(`a thread of ${millimetres} mm cannot be drawn; measure 0 to 300 mm`);
  }
  // Out of the content, over the lower rim, up and left to the stick; the longer the thread, the farther the stick.
  const start = own(8, width - 4);
  const mouth = own(0, width - 6.5);
  const reach = Math.min(millimetres, 40) / 40;
  const tip = { x: mouth.x - 4 - reach * 10, y: mouth.y - 3 - reach * 14 };
  const stick = new Pen().move(tip.x + 0.5, tip.y + 1).line([tip.x - 3.2 - (1 - reach) * 4, tip.y - 8]);
  const parts = [shape('stick', stick.d, 'ink', 'none', weights.main * 1.75)];
  if (millimetres < 10) {
    // Too short to count: it breaks between the cell and the stick.
    const rest = new Pen().move(start.x, start.y).line([mouth.x - 0.6, mouth.y]);
    const tail = new Pen().move(tip.x, tip.y).line([tip.x + 0.8, tip.y + 2.2]);
    return [
      shape('thread', rest.d, 'ink', 'none', weights.inner),
      shape('thread', tail.d, 'ink', 'none', weights.inner),
      ...parts,
    ];
  }
  const thread = new Pen()
    .move(start.x, start.y)
    .curve([mouth.x, mouth.y], [mouth.x - 2, mouth.y + 2], [(mouth.x + tip.x) / 2, (mouth.y + tip.y) / 2 + 3])
    .curve([(mouth.x + tip.x) / 2 - 3, (mouth.y + tip.y) / 2 + 1], [tip.x + 1, tip.y + 4], [tip.x, tip.y]);
  return [shape('thread', thread.d, 'ink', 'none', weights.inner), ...parts];
}

function drawSmell(smell: NonNullable<CombSectionParameters['smell']>): Shape[] {
  const wave = (x: number, y: number, height: number): Shape =>
    shape(
      'smell',
      new Pen().through([
        [x, y],
        [x - 2.6, y - height * 0.3],
        [x + 1.4, y - height * 0.65],
        [x - 1.6, y - height],
      ]).d,
      'ink',
      'none',
      1.6,
    );
  // Told apart by shape: three waves, two with a drop, one.
  if (smell === 'other') return [wave(8, 20, 14)];
  if (smell === 'glue') return [wave(5, 22, 15), wave(10.4, 19, 14), wave(16, 16, 13)];
  const drop = new Pen()
    .move(7, 25)
    .curve([10.6, 30], [10.6, 33], [7, 33])
    .curve([3.4, 33], [3.4, 30], [7, 25])
    .close();
  return [wave(6, 20, 15), wave(12, 17.6, 14), shape('smell', drop.d, 'ink', 'nectar', weights.inner)];
}

function drawFloor(floor: NonNullable<CombSectionParameters['floor']>): Shape[] {
  const board = shape('floor', new Pen().move(3, 44.6).line([45, 44.6]).d, 'ink', 'none', weights.main);
  const lying = [9, 20.5, 31, 41].map((x, index) => {
    const y = 44;
    if (floor === 'scales') {
      const d = new Pen()
        .move(x - 4, y - 3.4)
        .curve([x - 2, y + 0.6], [x + 2, y + 0.6], [x + 4, y - 3.4])
        .curve([x + 2, y - 1.4], [x - 2, y - 1.4], [x - 4, y - 3.4])
        .close().d;
      return shape('lying', d, 'ink', 'dark', weights.hair);
    }
    if (floor === 'mummies') {
      const d = new Pen()
        .move(x - 3.8, y - 1.6)
        .line([x - 2.4, y - 4.4], [x + 1, y - 4], [x + 3.4, y - 4.8], [x + 4, y - 1.4], [x, y - 0.6])
        .close().d;
      return shape('lying', d, 'ink', index % 2 ? 'grey' : 'white', weights.inner);
    }
    return shape('lying', new Pen().ellipse(x, y - 2.2, 4, 1.8).d, 'ink', 'brown', weights.inner);
  });
  return [board, ...lying];
}

function drawBees(bees: NonNullable<CombSectionParameters['bees']>): Shape[] {
  const stands: [number, number][] =
    bees === 'few'
      ? [[8, 12]]
      : [
          [9.6, 8.4],
          [8.6, 24.2],
          [7.8, 40],
        ];
  return stands.flatMap(([x, y]) => {
    // Head up, feet on the comb, wings outward.
    const at = placed(x, y, -84);
    const abdomen = new Pen(at).ellipse(-3.2, 0, 4.2, 2.9);
    const bands = new Pen(at).move(-2.2, -2.7).line([-2.2, 2.7]).move(-4.6, -2.6).line([-4.6, 2.6]);
    const thorax = new Pen(at).ellipse(2.8, 0, 2.4, 2.3);
    const head = new Pen(at).ellipse(6.1, 0.3, 1.4, 1.7);
    const wing = new Pen(at)
      .move(2.6, -1.6)
      .curve([1, -5.4], [-5, -6.6], [-6.4, -4.6])
      .curve([-6, -2.6], [-1, -2], [2.6, -1.6])
      .close();
    return [
      shape('bee', abdomen.d, 'ink', 'wax', weights.inner),
      shape('bee', bands.d, 'ink', 'none', weights.inner),
      shape('bee', wing.d, 'ink', 'white', weights.hair),
      shape('bee', thorax.d, 'ink', 'ink', weights.hair),
      shape('bee', head.d, 'ink', 'ink', weights.hair),
    ];
  });
}

function drops(own: Placement, u: number, v: number): Shape[] {
  return [0, 1, 2].map((index) =>
    shape('drop', new Pen(own).ellipse(u - index * 4.2, v - (index % 2) * 2.4, 1.2).d, 'ink', 'paper', weights.hair),
  );
}

function fluff(own: Placement): Shape[] {
  const growth = new Pen(own).through(
    [
      [2, 9],
      [4, 4],
      [8, 4.6],
      [11, 2],
      [15, 3.8],
      [19, 1.6],
      [23, 3.8],
      [27, 2.4],
      [29.6, 5.6],
      [32, 9.4],
      [29.8, 13.4],
      [29, 16.4],
      [23, 15.6],
      [18, 17],
      [12, 15.6],
      [6, 16.8],
      [4, 13],
    ],
    true,
  );
  const hairs = new Pen(own);
  for (const [u, v, du, dv] of [
    [5.5, 7, -1.8, -2],
    [13, 5.6, 0, -2.4],
    [21, 5.2, 0.6, -2.4],
    [28, 7.4, 2, -1.6],
  ] as const) {
    hairs.move(u, v).line([u + du, v + dv]);
  }
  return [
    shape('growth', growth.d, 'ink', 'white', weights.inner, [1.2, 1.8]),
    shape('growth', hairs.d, 'faint', 'none', weights.hair),
  ];
}

function tracheae(pen: Pen, centre: readonly [number, number], radius: number, line: Ink): Shape {
  const points: [number, number][] = [];
  for (let degrees = 60; degrees <= 300; degrees += 30) {
    const wobble = degrees % 60 ? 0.9 : -0.9;
    points.push(onCircle(centre, radius + wobble, degrees));
  }
  return shape('tracheae', pen.through(points).d, line, 'none', weights.hair);
}

/** Degrees run from the mouth's direction (0) clockwise: 90 is the upper wall, 180 the base. */
function onCircle(centre: readonly [number, number], radius: number, degrees: number): [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [centre[0] - radius * Math.cos(angle), centre[1] - radius * Math.sin(angle)];
}

function crescent(
  pen: Pen,
  centre: readonly [number, number],
  outer: number,
  inner: number,
  from: number,
  to: number,
): string {
  const steps = 8;
  const outside: [number, number][] = [];
  const inside: [number, number][] = [];
  for (let i = 0; i <= steps; i += 1) {
    const degrees = from + ((to - from) * i) / steps;
    outside.push(onCircle(centre, outer, degrees));
    // Thick in the middle, tapering to both ends.
    const taper = Math.sin((Math.PI * i) / steps) ** 0.5;
    inside.push(onCircle(centre, outer - (outer - inner) * Math.max(0.35, taper), degrees));
  }
  return pen.through([...outside, ...inside.reverse()], true).d;
}

function spokes(
  pen: Pen,
  centre: readonly [number, number],
  from: number,
  to: number,
  degrees: readonly number[],
): string {
  for (const one of degrees) {
    pen.move(...onCircle(centre, from, one)).line(onCircle(centre, to, one));
  }
  return pen.d;
}

/** A body of given half-widths along a bent spine. */
function ribbon(pen: Pen, spine: readonly (readonly [number, number])[], half: readonly number[]): string {
  const left: [number, number][] = [];
  const right: [number, number][] = [];
  spine.forEach(([u, v], index) => {
    const [nu, nv] = normal(spine, index);
    const h = half[index] ?? 1;
    left.push([u + nu * h, v + nv * h]);
    right.push([u - nu * h, v - nv * h]);
  });
  return pen.through([...left, ...right.reverse()], true).d;
}

function crossings(
  pen: Pen,
  spine: readonly (readonly [number, number])[],
  at: readonly number[],
  half: number,
): string {
  for (const index of at) {
    const [u, v] = spine[index] as readonly [number, number];
    const [nu, nv] = normal(spine, index);
    pen.move(u + nu * half, v + nv * half).line([u - nu * half, v - nv * half]);
  }
  return pen.d;
}

function normal(spine: readonly (readonly [number, number])[], index: number): [number, number] {
  const before = spine[Math.max(0, index - 1)] as readonly [number, number];
  const after = spine[Math.min(spine.length - 1, index + 1)] as readonly [number, number];
  const du = after[0] - before[0];
  const dv = after[1] - before[1];
  const length = Math.hypot(du, dv) || 1;
  return [-dv / length, du / length];
}
