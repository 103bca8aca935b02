/** Made-up names for the made-up place. They were put together for this demonstration and mean nobody and nowhere. */

export const firstNames = [
  'Aldith',
  'Bram',
  'Corra',
  'Dunstan',
  'Elowyn',
  'Fenna',
  'Garrick',
  'Hester',
  'Ivo',
  'Jessamy',
  'Kerrin',
  'Lorcan',
  'Merrily',
  'Nesta',
  'Orrin',
  'Petra',
  'Quill',
  'Rosal',
  'Silvan',
  'Tamsy',
];

export const lastNames = [
  'Ashlock',
  'Brindlemoor',
  'Cobbery',
  'Dapplewick',
  'Elmsgarth',
  'Fallowend',
  'Gorsebury',
  'Heathlow',
  'Inglemarsh',
  'Juniperry',
  'Kestlewood',
  'Larkspenny',
  'Mossgate',
  'Nettlecombe',
  'Oxbarrow',
  'Pebblewick',
  'Quarrowdale',
  'Rushbeck',
  'Sorrelton',
  'Thistlemere',
];

export const placeStarts = [
  'Alder',
  'Bramble',
  'Clover',
  'Damson',
  'Elder',
  'Fern',
  'Gorse',
  'Hawthorn',
  'Ivy',
  'Juniper',
  'Knapweed',
  'Lime',
  'Mallow',
  'Nettle',
  'Oak',
  'Plum',
  'Quince',
  'Rowan',
  'Sallow',
  'Thyme',
];

export const placeEnds = ['Bank', 'Croft', 'Dell', 'End', 'Field', 'Garth', 'Holt', 'Lea', 'Mead', 'Rise'];

export const roads = ['the mill lane', 'the old quarry', 'the chapel path', 'the ford', 'the upper wood', 'the weir'];
