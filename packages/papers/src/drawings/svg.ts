import type { Drawing } from './drawing.ts';
import { inks, washes } from './palette.ts';

/** The drawing as an SVG document of the given width in pixels, with its name for those who cannot see it. */
export function drawingToSvg(drawing: Drawing, widthPixels: number, name: string): string {
  const heightPixels = (widthPixels * drawing.height) / drawing.width;
  const shapes = drawing.shapes.map((shape) => {
    const dash = shape.dash ? ` stroke-dasharray="${shape.dash.join(' ')}"` : '';
    return `<path d="${shape.d}" fill="${washes[shape.fill]}" stroke="${inks[shape.stroke]}" stroke-width="${shape.weight}"${dash} vector-effect="non-scaling-stroke" stroke-linejoin="round" stroke-linecap="round"/>`;
  });
  const labels = drawing.labels.map(
    (label) =>
      `<text x="${label.x}" y="${label.y}" font-size="${label.size}" text-anchor="${label.anchor}" fill="${inks.ink}">${escapeMarkup(label.text)}</text>`,
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${widthPixels}" height="${heightPixels}" viewBox="0 0 ${drawing.width} ${drawing.height}"><title>${escapeMarkup(name)}</title>${shapes.join('')}${labels.join('')}</svg>`;
}

function escapeMarkup(text: string): string {
  return text.replace(/[&<>"]/g, (character) => `&#${character.charCodeAt(0)};`);
}
