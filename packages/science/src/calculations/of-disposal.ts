import { bathVolume, causticBath, hypochloriteBath } from '../disposal/baths.ts';
import { fuelForBurning, scorching } from '../disposal/fire.ts';
import { hotWaxDip } from '../disposal/hot-wax-dip.ts';
import { irradiationConsignment } from '../disposal/irradiation.ts';
import { killingDose } from '../disposal/killing.ts';
import { pitForBurning } from '../disposal/pit.ts';
import { type Calculation, calculation, shown as n } from './calculation.ts';

const room = 'disposal';
const dead = 'must be true: bees are killed first';
const ask = '(no published figure: choose one, or ask the authority)';

/** Every calculation for destroying and cleaning, by name. Each result opens with its cautions. */
export const ofDisposal: Readonly<Record<string, Calculation>> = {
  pitForBurning: calculation({
    room,
    line: 'pit for burning: length, depth, soil to move',
    inputs: {
      pieces: 'list of {count, lengthCentimetres, widthCentimetres, heightCentimetres}, outer measures',
      pitWidthMetres: `above 0 ${ask}`,
      pitLengthMetres: 'above 0, or null to work it out from the stacking height',
      stackingHeightMetres: `above 0 ${ask}, or null when the length is given`,
      remainsHeightMetres: 'height of what is left, measured on site, 0 or more',
      coverMetres: 'soil over the remains by the local rule, above 0',
      beesDead: dead,
    },
    formula:
      'V = sum(count * l * w * h); length = V/(width * stacking height); depth = remains + cover; soil = area * depth',
    sources: ['CA-FAC', 'WA-AFB22'],
    call: pitForBurning,
    steps: (i, r) => [
      `to burn ${n(r.volumeToBurn)} m³`,
      `pit ${n(r.pitLength)} m by ${n(i.pitWidthMetres)} m, ${n(r.pitDepth)} m deep (${n(i.remainsHeightMetres)} + ${n(i.coverMetres)})`,
      `soil to move ${n(r.soilToMove)} m³`,
    ],
  }),
  fuelForBurning: calculation({
    room,
    line: 'fuel, fires and hours for burning hives; petrol is refused',
    inputs: {
      hives: 'whole, 1 or more',
      fuel: '"comb wax alone", "dry wood", "straw" or "charcoal"',
      kilogramsPerHive: `above 0 ${ask}; null for comb wax alone`,
      hivesAtOnce: 'as many as the pit takes, whole',
      hoursPerFire: `above 0 ${ask}`,
      beesDead: dead,
    },
    formula: 'fuel = hives * kg; fires = ceil(hives/at once); hours = fires * hours per fire',
    sources: ['NZ-KILL'],
    call: fuelForBurning,
    steps: (i, r) => [
      `${i.hives} hives, ${i.hivesAtOnce} at once: ${r.fires} fires, ${n(r.hours)} hours`,
      `fuel ${n(r.fuelKilograms)} kg`,
    ],
  }),
  scorching: calculation({
    room,
    line: "time for scorching boxes, where the jurisdiction's pack accepts it",
    inputs: { boxes: 'whole', minutesPerBox: `above 0 ${ask}`, acceptedByPack: 'must be true', beesDead: dead },
    formula: 'boxes * minutes per box',
    sources: ['CA-FAC'],
    call: scorching,
    steps: (i, r) => [`${i.boxes} * ${n(i.minutesPerBox)} = ${n(r.minutes)} minutes`],
  }),
  hotWaxDip: calculation({
    room,
    line: 'hot-wax dip: dips, minutes, wax, and what the heat does',
    inputs: {
      item: '"boxes", "wooden floors" or "wooden lids"',
      pieces: 'whole',
      piecesPerDip: 'whole',
      celsius: '160 to 175',
      minutes: 'per dip, 10 or more',
      vatLitres: 'wax to fill the vat, above 0',
      cleanAndDry: 'must be true',
      beesDead: dead,
    },
    formula: 'dips = ceil(pieces/per dip); log10 reduction = minutes/D, D 1.5 to 2.5 min at 150 °C',
    sources: ['WA-AFB22', 'MACHOVA93', 'BTHENET'],
    call: hotWaxDip,
    steps: (i, r) => [
      `${r.dips} dips of ${n(i.minutes)} minutes: ${n(r.minutesInWax)} minutes in the wax`,
      `${n(r.microcrystallineLitres)} l microcrystalline and ${n(r.paraffinWaxLitres)} l paraffin wax (solid wax, not kerosene)`,
      `log10 reduction ${n(r.logReductionLow)} to ${n(r.logReductionHigh)}`,
    ],
  }),
  bathVolume: calculation({
    room,
    line: 'liquid to fill a bath',
    inputs: {
      lengthCentimetres: 'inside, above 0',
      widthCentimetres: 'inside, above 0',
      depthCentimetres: 'of liquid with the pieces in it, above 0',
      displacedLitres: 'by the pieces, 0 or more',
    },
    formula: 'length * width * depth / 1000 - displaced',
    sources: [],
    call: bathVolume,
    steps: (i, r) => [
      `${n((i.lengthCentimetres * i.widthCentimetres * i.depthCentimetres) / 1000)} - ${n(i.displacedLitres)} = ${n(r.litres)} l`,
    ],
  }),
  hypochloriteBath: calculation({
    room,
    line: 'hypochlorite bath: parts of water, litres, and which guidance it meets',
    inputs: {
      stockPercent: 'strength of the stock, above 0, at most 100',
      wantedPercent: "above 0, at most the stock's",
      bathLitres: 'above 0',
      minutes: 'of immersion, above 0',
      cleaned: 'must be true',
      beesDead: dead,
    },
    formula: 'parts water = stock/wanted - 1',
    sources: ['NBU-HYPO', 'BTHENET', 'WA-AFB22'],
    call: hypochloriteBath,
    steps: (i, r) => [
      `${n(i.stockPercent)}/${n(i.wantedPercent)} - 1 = ${n(r.partsWater)} parts water`,
      `${n(r.stockLitres)} l stock and ${n(r.waterLitres)} l water`,
      `meets: ${r.meets.join('; ') || 'none of the guidance known here'}`,
    ],
  }),
  causticBath: calculation({
    room,
    line: 'caustic soda for a cleaning bath; not a decontamination',
    inputs: { bathLitres: 'above 0', gramsPerLitre: `above 0 ${ask}`, minutes: `above 0 ${ask}`, beesDead: dead },
    formula: 'grams = litres * grams per litre',
    sources: ['WA-AFB22'],
    call: causticBath,
    steps: (i, r) => [
      `${n(i.bathLitres)} * ${n(i.gramsPerLitre)} = ${n(r.causticGrams)} g, ${n(r.strengthPercent)} %; cleans only`,
    ],
  }),
  irradiationConsignment: calculation({
    room,
    line: 'irradiation: units, pallets, and whether the delivered dose is enough',
    inputs: {
      boxes: 'whole',
      boxesPerUnit: 'boxes wrapped together, whole',
      kilogramsPerBox: 'above 0; a unit at most 25 kg',
      unitHeightMetres: 'above 0 and below 2',
      unitsPerLayer: 'on a pallet, whole',
      packMinimumKiloGray: "minimum dose the jurisdiction's pack asks for, above 0",
      deliveredMinimumKiloGray: 'from the certificate, 0 or more, or null',
      freeOfBeesAndHoney: 'must be true',
      beesDead: dead,
    },
    formula: 'units = ceil(boxes/per unit); log10 reduction = dose/0.2 kGy',
    sources: ['GUZMAN11', 'WA-AFB22', 'FL-5B54', 'CJM62'],
    call: irradiationConsignment,
    steps: (i, r) => [
      `${r.units} units of ${n(r.kilogramsPerUnit)} kg on ${r.pallets} pallets, ${n(r.kilograms)} kg`,
      `dose ${n(i.deliveredMinimumKiloGray)} kGy delivered at least, ${n(i.packMinimumKiloGray)} asked for`,
      `log10 reduction ${n(r.logReduction)} on glass`,
    ],
  }),
  killingDose: calculation({
    room,
    line: "killing agent, only where the jurisdiction's pack permits it",
    inputs: {
      agent: '"petrol"',
      permittedByPack: 'list of {agent, article} the pack permits; empty permits nothing',
      hives: 'whole',
      storeys: 'whole, 1 to 4',
    },
    formula: '500 ml for 1 or 2 storeys, about 1,000 ml for 3 or 4; closed 10 to 15 minutes',
    sources: ['NZ-KILL'],
    call: killingDose,
    steps: (i, r) => [
      `permitted by ${r.permittedBy}`,
      `${i.hives} hives * ${r.millilitresPerHive} ml = ${n(r.litres)} l, closed ${r.leastMinutesClosed} to ${r.mostMinutesClosed} minutes`,
    ],
  }),
};
