import type { FeatureCollection } from 'geojson';
import type { StyleSpecification } from 'maplibre-gl';
import type { BaseMap } from './base-map.ts';

const sea = '#E4EAEA';
const land = '#FBF8F1';
const ink = '#1B1A17';
const line = '#6F6959';

const nothing: FeatureCollection = { type: 'FeatureCollection', features: [] };

/** A font that every device has; without `glyphs` the map draws letters from the device's own. */
const font = ['Atkinson Hyperlegible Next Variable', 'sans-serif'];

/** The whole style: sea, land, borders, degrees, and apiaries as marks or heaps, each with its word or number. */
export function mapStyle(base: BaseMap): StyleSpecification {
  return {
    version: 8,
    sources: {
      land: { type: 'geojson', data: base.land },
      borders: { type: 'geojson', data: base.borders },
      degrees: { type: 'geojson', data: nothing },
      apiaries: { type: 'geojson', data: nothing },
    },
    layers: [
      { id: 'sea', type: 'background', paint: { 'background-color': sea } },
      { id: 'land', type: 'fill', source: 'land', paint: { 'fill-color': land } },
      { id: 'shore', type: 'line', source: 'land', paint: { 'line-color': line, 'line-width': 1 } },
      {
        id: 'borders',
        type: 'line',
        source: 'borders',
        paint: { 'line-color': line, 'line-width': 1, 'line-dasharray': [4, 2] },
      },
      {
        id: 'degrees-10',
        type: 'line',
        source: 'degrees',
        filter: ['==', ['get', 'step'], 10],
        paint: { 'line-color': line, 'line-opacity': 0.25, 'line-width': 1 },
      },
      {
        id: 'degrees-1',
        type: 'line',
        source: 'degrees',
        minzoom: 5,
        filter: ['==', ['get', 'step'], 1],
        paint: { 'line-color': line, 'line-opacity': 0.25, 'line-width': 1 },
      },
      {
        id: 'degrees-0.1',
        type: 'line',
        source: 'degrees',
        minzoom: 8,
        filter: ['==', ['get', 'step'], 0.1],
        paint: { 'line-color': line, 'line-opacity': 0.2, 'line-width': 1 },
      },
      {
        id: 'chosen',
        type: 'circle',
        source: 'apiaries',
        filter: ['==', ['get', 'chosen'], true],
        paint: { 'circle-radius': 20, 'circle-opacity': 0, 'circle-stroke-color': '#063F60', 'circle-stroke-width': 3 },
      },
      {
        // Below the marks: what lies above is placed first, so that no name covers a mark.
        id: 'names',
        type: 'symbol',
        source: 'apiaries',
        filter: ['has', 'apiary'],
        layout: {
          'text-field': ['get', 'name'],
          'text-font': font,
          'text-size': 13,
          'text-anchor': 'top',
          'text-offset': [0, 1.2],
          'text-padding': 0,
          'symbol-sort-key': ['*', -1, ['get', 'weight']],
        },
        paint: { 'text-color': ink, 'text-halo-color': land, 'text-halo-width': 2 },
      },
      {
        id: 'marks',
        type: 'symbol',
        source: 'apiaries',
        filter: ['has', 'apiary'],
        layout: {
          'icon-image': ['get', 'image'],
          'icon-allow-overlap': true,
          'icon-padding': 0,
          // The gravest lies on top.
          'symbol-sort-key': ['get', 'weight'],
        },
      },
      {
        id: 'heaps',
        type: 'symbol',
        source: 'apiaries',
        filter: ['has', 'count'],
        layout: {
          'icon-image': ['get', 'image'],
          'icon-allow-overlap': true,
          'icon-size': ['interpolate', ['linear'], ['get', 'count'], 1, 0.9, 100, 1.1, 10000, 1.5],
          'text-field': ['get', 'label'],
          'text-font': font,
          'text-size': 12,
          'text-anchor': 'center',
          'text-offset': [-0.2, 0.25],
          'text-allow-overlap': true,
        },
        paint: { 'text-color': ink },
      },
    ],
  };
}
