import { type MapBackground, mapBackground } from '@combside/contract/map';
import { addProtocol, type Map as DrawnMap } from 'maplibre-gl';
import { ask } from '../../device/ask/ask.ts';

/** Behind the shore lines and all that is ours; it covers the land that the program brings along. */
const below = 'shore';

/** PMTiles, version 3: tiles of this type hold lines and areas, all others hold pictures. */
const vectorTiles = 1;

/**
 * Lays what the office has set behind its apiaries: an archive of tiles at the server, or picture tiles from elsewhere.
 * Where nothing is set, or nothing answers, the land of the program stays in sight.
 *
 * @param failed called once when something was set and could not be fetched
 */
export async function addBackground(map: DrawnMap, failed: () => void): Promise<void> {
  const background = await told();
  if (!background || background.kind === 'none' || background.address === null) return;
  map.on('error', (event) => {
    if ((event as { sourceId?: string }).sourceId === 'background') failed();
  });
  try {
    if (background.kind === 'tiles') {
      map.addSource('background', { type: 'raster', tiles: [background.address], tileSize: 256 });
      map.addLayer({ id: 'background', type: 'raster', source: 'background' }, below);
      return;
    }
    const { PMTiles, Protocol } = await import('pmtiles');
    const address = new URL(background.address, location.href).href;
    const archive = new PMTiles(address);
    const protocol = new Protocol();
    protocol.add(archive);
    addProtocol('pmtiles', protocol.tile);
    const { tileType, maxZoom } = await archive.getHeader();
    const url = `pmtiles://${address}`;
    if (tileType !== vectorTiles) {
      map.addSource('background', { type: 'raster', url, tileSize: 256 });
      map.addLayer({ id: 'background', type: 'raster', source: 'background' }, below);
      return;
    }
    map.addSource('background', { type: 'vector', url, maxzoom: maxZoom });
    const { vector_layers: layers = [] } = (await archive.getMetadata()) as { vector_layers?: { id: string }[] };
    // Whatever an archive calls its layers: lines and outlines in faint ink, so that nothing outshines the marks.
    for (const { id } of layers) {
      map.addLayer(
        {
          id: `background ${id}`,
          type: 'line',
          source: 'background',
          'source-layer': id,
          paint: { 'line-color': '#6F6959', 'line-opacity': 0.45, 'line-width': 1 },
        },
        below,
      );
    }
  } catch {
    failed();
  }
}

async function told(): Promise<MapBackground | null> {
  try {
    return await ask(mapBackground, '/api/map/background');
  } catch {
    return null;
  }
}
