import { spawn } from 'node:child_process';
import { EventEmitter } from 'node:events';
import { copyFile, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { paintComb } from '@combside/science/comb/painter/paint-comb';
import { drawSettings } from '@combside/science/comb/painter/settings';
import { seeded } from '@combside/science/random/seeded';
import sharp, { type Sharp } from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodePicture } from './decode-picture.ts';
import { read } from './read.ts';

const reference = fileURLToPath(new URL('../../science/src/comb/reference/', import.meta.url));

const settings = drawSettings('held-out', 41, {
  width: 480,
  height: 360,
  pitch: 26,
  beeCover: 0,
  glove: false,
  brush: false,
  frame: 'comb only',
  tiltX: 0,
  tiltY: 0,
  light: { shadow: 1 },
  content: { kind: 'brood nest' },
  camera: { blur: 0.8, shallow: 0 },
});
const painted = paintComb(settings, 41);
const comb = (): Sharp =>
  sharp(Buffer.from(painted.data.buffer), { raw: { width: painted.width, height: painted.height, channels: 3 } });

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'combside-read-'));
});
afterAll(() => rm(folder, { recursive: true }));

async function run(...args: string[]): Promise<{ code: number; out: string; err: string }> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await read(args, { out: (line) => out.push(line), err: (line) => err.push(line) });
  return { code, out: out.join('\n'), err: err.join('\n') };
}

interface Told {
  verdict: string;
  reasons: string[];
  says: string[];
  pitchPx: number;
  cells: { x: number; y: number; class: string; confidence: number }[];
  orientation?: number;
  frames?: number;
  width?: number;
}

async function readBytes(name: string, bytes: Uint8Array): Promise<Told> {
  const path = join(folder, name);
  await writeFile(path, bytes);
  const { code, out } = await run(path, '--json');
  expect(code).toBe(0);
  const told = JSON.parse(out) as Told;
  if (told.verdict === 'refused') {
    expect(told.cells).toEqual([]);
    expect(told.says.join(' ').length).toBeGreaterThan(20);
  }
  return told;
}

describe('combside read', () => {
  it('reads a real photograph as JSON', async () => {
    const { code, out } = await run(join(reference, 'a-open-white-comb.jpg'), '--json');
    expect(code).toBe(0);
    const told = JSON.parse(out) as Told;
    expect(told.verdict).toBe('read');
    expect(told.reasons).toEqual(expect.arrayContaining(['never-a-diagnosis', 'scale-not-visible']));
    // Pitch measured by hand on this picture: 59.3 px in the middle, 67 at the top, 56 at the bottom.
    expect(told.pitchPx).toBeGreaterThan(54);
    expect(told.pitchPx).toBeLessThan(66);
    expect(told.cells.length).toBeGreaterThan(75);
  });

  it('refuses the frame under bees in words, in German too, and exits 0', async () => {
    const { code, out } = await run(join(reference, 'f-frame-in-hand.jpg'), '--language', 'de');
    expect(code).toBe(0);
    expect(out).toContain('Nicht ausgewertet');
    expect(out).toMatch(/Wabe|Bienen/);
  });

  it('says what is wrong with a wrong call and exits 2', async () => {
    expect(await run()).toMatchObject({ code: 2 });
    expect((await run('nowhere.jpg')).err).toContain('nowhere.jpg');
    expect((await run('x', '--colour')).err).toContain('--colour');
    expect((await run(reference, '--region', '1,2 3')).err).toContain('1,2 3');
    expect((await run(folder, '--json')).code).toBe(2);
  });

  it('reads only inside the region given', async () => {
    const { out } = await run(
      join(reference, 'a-open-white-comb.jpg'),
      '--json',
      '--region',
      '0,0 320,0 320,480 0,480',
    );
    const told = JSON.parse(out) as Told;
    expect(told.verdict).toBe('read');
    for (const cell of told.cells) expect(cell.x).toBeLessThan(320 + 20);
  });
});

describe('the plane', () => {
  const wholeFrame = paintComb(
    drawSettings('held-out', 43, {
      width: 480,
      height: 360,
      pitch: 15,
      turn: 0,
      bend: 0,
      beeCover: 0,
      glove: false,
      brush: false,
      frame: 'whole frame',
      tiltX: 0.35,
      tiltY: 0,
      light: { shadow: 1 },
      camera: { blur: 0.7, shallow: 0 },
    }),
    43,
  );
  const opening = wholeFrame.opening ?? [];
  let file: string;
  beforeAll(async () => {
    file = join(folder, 'whole-frame.png');
    const { width, height, data } = wholeFrame;
    await sharp(Buffer.from(data.buffer), { raw: { width, height, channels: 3 } })
      .png()
      .toFile(file);
  });

  it('is told with the corners found, in pixels of the file, and in words', async () => {
    const told = JSON.parse((await run(file, '--json')).out) as { plane: { by: string; corners: [number, number][] } };
    expect(told.plane.by).toBe('corners-found');
    expect(told.plane.corners).toHaveLength(4);
    told.plane.corners.forEach(([x, y], n) => {
      const [u, v] = opening[n] as readonly [number, number];
      expect(Math.hypot(x - u, y - v)).toBeLessThan(5);
    });
    const { out } = await run(file, '--language', 'de');
    expect(out).toContain('Ecken des Rähmchens, gefunden bei');
    // The painter tilted it by 20 degrees.
    expect(out).toMatch(/um etwa (1[6-9]|2[0-4])° zur Kamera geneigt/);
  });

  it('follows from the corners given', async () => {
    const corners = opening.flat().map(Math.round).join(',');
    const told = JSON.parse((await run(file, '--json', '--corners', corners)).out) as {
      verdict: string;
      plane: { by: string; corners: [number, number][] };
    };
    expect(told.verdict).toBe('read');
    expect(told.plane.by).toBe('corners-set');
    expect(told.plane.corners.flat().join(',')).toBe(corners);
    expect((await run(file, '--corners', corners)).out).toContain('by the corners of the frame as given');
  });

  it('is refused from corners that are none, with what is wrong', async () => {
    for (const bad of ['', '1,2,3', '1,2,3,4,5,6,7,x', '0,0,100,100,100,0,0,100']) {
      const { code, err } = await run(file, '--corners', bad);
      expect(code).toBe(2);
      expect(err).toContain(`"${bad}"`);
    }
    const both = await run(file, '--corners', '0,0,9,0,9,9,0,9', '--region', '0,0 9,0 9,9');
    expect(both.code).toBe(2);
    expect(both.err).toContain('not both');
  });
});

describe('several photographs', () => {
  const names = ['a-open-white-comb.jpg', 'd-new-comb-queen.jpg', 'f-frame-in-hand.jpg'];
  const pictures = names.map((name) => join(reference, name));

  it('give one object on each line, in the order of their names, with progress beside', async () => {
    const some = await mkdtemp(join(tmpdir(), 'combside-read-folder-'));
    // Written in another order than that of their names.
    for (const name of [...names].reverse()) await copyFile(join(reference, name), join(some, name));
    await writeFile(join(some, 'notes.txt'), 'not a picture, and not asked for');
    const { code, out, err } = await run(some, '--json');
    await rm(some, { recursive: true });
    expect(code).toBe(0);
    const told = out.split('\n').map((line) => JSON.parse(line) as Told & { file: string });
    expect(told.map((one) => one.file)).toEqual(names.map((name) => join(some, name)));
    expect(told.map((one) => one.verdict)).toEqual(['read', 'read', 'refused']);
    expect(err.split('\n')).toEqual(names.map((name, n) => `${n + 1} of 3: ${join(some, name)}`));
  });

  it('give a table whose columns stand under their titles, and say once what holds for all', async () => {
    const { code, out } = await run(...pictures);
    expect(code).toBe(0);
    const [head = '', first = '', second = '', refused = ''] = out.split('\n');
    for (const title of ['cells', 'solidness', 'not read']) {
      expect(first.charAt(head.indexOf(title))).toMatch(/[-\d]/);
      expect(second.charAt(head.indexOf(title))).toMatch(/[-\d]/);
    }
    expect(refused).toContain('Not read: ');
    expect(out.split('A measurement, not a diagnosis').length).toBe(2);
    expect(out).toMatch(/Fewer than 100 cells .* \(a-open-white-comb[.]jpg\)$/m);
  });

  it('stop after the photograph at hand when interrupted', async () => {
    const interrupts = new EventEmitter();
    const out: string[] = [];
    const err: string[] = [];
    const outlet = {
      out: (line: string) => {
        out.push(line);
        interrupts.emit('SIGINT');
      },
      err: (line: string) => err.push(line),
    };
    expect(await read([...pictures, '--json'], outlet, interrupts)).toBe(130);
    expect(out).toHaveLength(1);
    expect(err.at(-1)).toContain('1 of 3');
    expect(interrupts.listenerCount('SIGINT')).toBe(0);
  });

  it('leave whole lines behind when the process is interrupted for real', async () => {
    const entry = fileURLToPath(new URL('./combside.ts', import.meta.url));
    const many = Array.from({ length: 12 }, (_, n) => pictures[n % 2] as string);
    const child = spawn(process.execPath, ['--import', 'tsx', entry, 'read', ...many, '--json'], {
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let out = '';
    let sent = false;
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      out += text;
      if (!sent && out.includes('\n')) {
        sent = true;
        child.kill('SIGINT');
      }
    });
    const code = await new Promise((done) => child.on('close', done));
    expect(code).toBe(130);
    expect(out.endsWith('\n')).toBe(true);
    const told = out.trimEnd().split('\n');
    expect(told.length).toBeLessThan(12);
    for (const line of told) expect((JSON.parse(line) as Told).verdict).toBe('read');
  }, 60_000);
});

describe('files of every kind', () => {
  let plain: Told;
  beforeAll(async () => {
    plain = await readBytes('plain.png', await comb().png().toBuffer());
  });

  /** Share of the plain reading's cells found again within a third of a pitch. */
  const foundAgain = (told: Told): number => {
    const hits = plain.cells.filter((cell) =>
      told.cells.some((other) => Math.hypot(cell.x - other.x, cell.y - other.y) < 0.33 * plain.pitchPx),
    );
    return hits.length / plain.cells.length;
  };

  it('reads the plain picture', () => {
    expect(plain.verdict).toBe('read');
    expect(plain.cells.length).toBeGreaterThan(100);
  });

  const kinds: [string, () => Promise<Buffer>][] = [
    ['jpeg.jpg', () => comb().jpeg({ quality: 85 }).toBuffer()],
    ['progressive.jpg', () => comb().jpeg({ progressive: true }).toBuffer()],
    ['cmyk.jpg', () => comb().toColourspace('cmyk').jpeg({ quality: 92 }).toBuffer()],
    ['sixteen-bit.png', () => comb().toColourspace('rgb16').png().toBuffer()],
    ['webp.webp', () => comb().webp({ quality: 85 }).toBuffer()],
    ['tiff.tiff', () => comb().tiff().toBuffer()],
    ['palette.png', () => comb().png({ palette: true }).toBuffer()],
    ['transparent.png', () => comb().ensureAlpha(0.9).png().toBuffer()],
    ['grey.png', () => comb().greyscale().png().toBuffer()],
  ];
  it.each(kinds)('%s gives the same lattice', async (name, make) => {
    const told = await readBytes(name, await make());
    expect(told.verdict).toBe('read');
    expect(foundAgain(told)).toBeGreaterThan(0.9);
  });

  it('keeps pixels as stored when the file asks to be turned, and says which turn', async () => {
    const told = await readBytes('turned.jpg', await comb().withMetadata({ orientation: 6 }).jpeg().toBuffer());
    expect(told).toMatchObject({ orientation: 6, width: 480 });
    expect(foundAgain(told)).toBeGreaterThan(0.9);
  });

  it('reads the first frame of an animation', async () => {
    const frame = await comb().gif().toBuffer();
    const other = await comb().negate().gif().toBuffer();
    const animated = await sharp([frame, other], { join: { animated: true } })
      .gif()
      .toBuffer();
    const told = await readBytes('animated.gif', animated);
    expect(told.frames).toBe(2);
    expect(told.verdict).toBe('read');
    expect(foundAgain(told)).toBeGreaterThan(0.85);
  });

  it('refuses what is no picture, or none any more', async () => {
    const jpeg = await comb().jpeg().toBuffer();
    expect((await readBytes('empty.jpg', new Uint8Array())).reasons).toEqual(['not-a-picture']);
    expect((await readBytes('text.jpg', Buffer.from('not a picture at all'))).reasons).toEqual(['not-a-picture']);
    expect((await readBytes('half.jpg', jpeg.subarray(0, jpeg.length >> 1))).reasons).toEqual(['damaged']);
    const drawing = Buffer.from(
      '<svg xmlns="http://www.w3.org/2000/svg" width="300" height="300"><rect width="9"/></svg>',
    );
    expect((await readBytes('drawing.png', drawing)).reasons).toEqual(['not-a-picture']);
  });

  it('refuses tiny and huge pictures before decoding them', async () => {
    const dot = await sharp({ create: { width: 1, height: 1, channels: 3, background: '#888' } })
      .png()
      .toBuffer();
    expect((await readBytes('dot.png', dot)).reasons).toEqual(['picture-too-small']);
    const stamp = await comb().resize(60, 45).png().toBuffer();
    expect((await readBytes('stamp.png', stamp)).reasons).toEqual(['picture-too-small']);
    // A PNG that claims 60,000 by 60,000 pixels: 3.6 gigapixels in a few bytes.
    const huge = Buffer.from(dot);
    huge.writeUInt32BE(60_000, 16);
    huge.writeUInt32BE(60_000, 20);
    const told = await readBytes('huge.png', huge);
    expect(['file-too-large', 'damaged', 'not-a-picture']).toContain(told.reasons[0]);
  });

  it('refuses one colour, noise and a photograph turned almost black', async () => {
    const flat = sharp({ create: { width: 400, height: 300, channels: 3, background: '#b08040' } });
    expect((await readBytes('flat.png', await flat.png().toBuffer())).verdict).toBe('refused');
    const chance = seeded(5);
    const grains = Buffer.from(Uint8Array.from({ length: 400 * 300 * 3 }, () => chance.integer(256)));
    const noise = sharp(grains, { raw: { width: 400, height: 300, channels: 3 } });
    expect((await readBytes('noise.png', await noise.png().toBuffer())).verdict).toBe('refused');
    const night = await comb().linear(0.02, 0).png().toBuffer();
    expect((await readBytes('night.png', night)).reasons).toEqual(['too-dark']);
  });

  it('never throws on flipped bytes', async () => {
    const chance = seeded(6);
    for (const make of [
      () => comb().resize(160, 120).jpeg(),
      () => comb().resize(160, 120).png(),
      () => comb().resize(160, 120).webp(),
    ]) {
      const good = await make().toBuffer();
      for (let n = 0; n < 12; n++) {
        const bad = Buffer.from(good);
        for (let k = 0; k < 1 + chance.integer(20); k++) bad[chance.integer(bad.length)] = chance.integer(256);
        const decoded = await decodePicture(bad);
        if ('picture' in decoded)
          expect(decoded.picture.data.length).toBe(decoded.picture.width * decoded.picture.height * 3);
        else expect(['not-a-picture', 'damaged', 'file-too-large', 'picture-too-small']).toContain(decoded.problem);
      }
    }
  });
});
