/*
 * Inputs for the calculations of laboratory, colony and disposal, and for the office's questions. All invented, to time
 * them; none is a recommended figure.
 */

const dead = { beesDead: true };
const day = '2026-06-21';

export const examples: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  plateCount: {
    plates: [
      { dilution: 1, millilitres: 0.1, colonies: 12 },
      { dilution: 1, millilitres: 0.1, colonies: 15 },
      { dilution: 0.1, millilitres: 0.1, colonies: 2 },
    ],
    suspensionMillilitres: 20,
    amount: 10,
    unit: 'g',
    countable: null,
    confidence: 0.95,
  },
  sporesAssumingRecovery: { load: 240, recovery: 0.1 },
  loadInPool: { load: 6, parts: 5, detectionLimit: 1 },
  chanceOfCarrierInSample: { carrierShare: 0.05, bees: 60 },
  meaningOfLoad: {
    load: 240,
    lower: 90,
    upper: 520,
    unit: 'g',
    material: 'honey',
    method: 'culture',
    limits: {
      laboratory: 'invented',
      method: 'culture',
      material: 'honey',
      unit: 'g',
      statedOn: day,
      source: 'invented',
      classes: [
        { name: 'few', from: 0 },
        { name: 'some', from: 100 },
      ],
    },
  },
  combineTwoTests: {
    sensitivities: [0.9, 0.8],
    specificities: [0.95, 0.9],
    covarianceInfected: 0.01,
    covarianceUninfected: 0,
    reading: 'series',
  },
  predictiveValues: { sensitivity: 0.9, specificity: 0.95, prevalence: 0.05 },
  meaningOfResult: {
    result: 'positive',
    prior: { low: 0.01, value: 0.05, high: 0.1 },
    sensitivity: { low: 0.8, value: 0.9, high: 0.95 },
    specificity: { low: 0.9, value: 0.95, high: 0.99 },
  },
  postTestProbability: { priorProbability: 0.05, likelihoodRatios: [4, 0.5, 2] },
  multipleHypotheses: {
    priors: [0.2, 0.3, 0.5],
    signProbabilities: [
      [0.9, 0.1],
      [0.5, 0.5],
      [0.1, 0.2],
    ],
    findings: [true, null],
  },
  beesOnCombs: {
    sides: Array.from({ length: 20 }, () => ({ squareCentimetres: 871, covered: 0.8 })),
    beesPerSquareDecimetre: 130,
    errorByEye: 0.15,
  },
  broodCells: {
    sides: Array.from({ length: 20 }, () => ({ squareCentimetres: 871, eggs: 0.05, larvae: 0.1, capped: 0.2 })),
    cellsPerSquareCentimetre: 4,
    errorByEye: 0.15,
  },
  cellsPerArea: { widthMillimetres: 5.2 },
  cellsFromCount: { cellsInTenCentimetres: 19 },
  eggsPerDay: { cappedCells: 12_000 },
  broodBalance: { egg: 1000, larva: 2000, capped: 4000 },
  cellDates: { caste: 'worker', stage: 'capped', seenOn: day },
  earliestSigns: { exposedOn: day },
  releaseThisSeason: {
    countedFrom: day,
    firstLookAfterDays: 61,
    looks: 2,
    daysBetweenLooks: 56,
    lastEggsOn: '2026-09-30',
    firstEggsOn: '2027-02-20',
  },
  pitForBurning: {
    ...dead,
    pieces: [{ count: 4, lengthCentimetres: 50, widthCentimetres: 40, heightCentimetres: 80 }],
    pitWidthMetres: 1,
    pitLengthMetres: null,
    stackingHeightMetres: 0.5,
    remainsHeightMetres: 0.2,
    coverMetres: 0.61,
  },
  fuelForBurning: { ...dead, hives: 4, fuel: 'dry wood', kilogramsPerHive: 12, hivesAtOnce: 2, hoursPerFire: 2 },
  scorching: { ...dead, boxes: 8, minutesPerBox: 5, acceptedByPack: true },
  hotWaxDip: {
    ...dead,
    item: 'boxes',
    pieces: 9,
    piecesPerDip: 2,
    celsius: 160,
    minutes: 10,
    vatLitres: 200,
    cleanAndDry: true,
  },
  bathVolume: { lengthCentimetres: 60, widthCentimetres: 50, depthCentimetres: 40, displacedLitres: 10 },
  hypochloriteBath: { ...dead, stockPercent: 3, wantedPercent: 0.5, bathLitres: 60, minutes: 20, cleaned: true },
  causticBath: { ...dead, bathLitres: 60, gramsPerLitre: 10, minutes: 15 },
  irradiationConsignment: {
    ...dead,
    boxes: 30,
    boxesPerUnit: 2,
    kilogramsPerBox: 8,
    unitHeightMetres: 0.6,
    unitsPerLayer: 4,
    packMinimumKiloGray: 20,
    deliveredMinimumKiloGray: null,
    freeOfBeesAndHoney: true,
  },
  killingDose: {
    agent: 'petrol',
    permittedByPack: [{ agent: 'petrol', article: 'cl. 0 (invented)' }],
    hives: 3,
    storeys: 2,
  },
};

/** Every question at inputs of every day, and at the largest its fields take. */
export const heaviestInputs: readonly { readonly question: string; readonly inputs: string }[] = [
  { question: 'how-many-to-open', inputs: 'colonies=40&sensitivity=0.8' },
  { question: 'how-many-to-open', inputs: 'colonies=100000&affected=0.001&sensitivity=0.05&confidence=0.9999' },
  { question: 'how-many-to-open', inputs: 'colonies=100000&affected=0.3&sensitivity=0.8' },
  { question: 'finding-none', inputs: 'colonies=40&opened=12&sensitivity=0.8' },
  { question: 'finding-none', inputs: 'colonies=100000&opened=50000&sensitivity=0.01' },
  { question: 'finding-none', inputs: 'colonies=100000&opened=20&sensitivity=0.1' },
  { question: 'how-frequent', inputs: 'positives=12&tested=500' },
  { question: 'how-frequent', inputs: 'positives=45&tested=150&reading=known&sensitivity=0.96&specificity=0.89' },
  { question: 'how-frequent', inputs: 'positives=40000&tested=100000&reading=known&sensitivity=0.96&specificity=0.89' },
  {
    question: 'how-frequent',
    inputs:
      'positives=20&tested=120&reading=estimated&diseasedFound=20&diseasedTested=22&freeNegative=89&freeTested=92',
  },
  { question: 'free-since', inputs: 'introduction=0.01&round=0.1&rounds=60' },
  { question: 'do-two-agree', inputs: 'both=19&firstOnly=10&secondOnly=6&neither=256' },
  {
    question: 'do-two-agree',
    inputs:
      'groups=two&both=14&firstOnly=4&secondOnly=9&neither=528&both2=887&firstOnly2=31&secondOnly2=37&neither2=367',
  },
  { question: 'laboratory-number', inputs: 'load=240&unit=g&material=honey&method=culture' },
  {
    question: 'laboratory-number',
    inputs:
      'report=positive&priorLow=0.01&priorHigh=0.1&sensitivityLow=0.8&sensitivityHigh=0.95&specificityLow=0.9&specificityHigh=0.99',
  },
  {
    question: 'burn-and-bury',
    inputs:
      'beesDead=yes&hives=4&length=50&width=40&height=80&pitWidth=1&stacking=0.5&remains=0.2&cover=0.61&fuel=dry+wood&fuelPerHive=12&atOnce=2&hoursPerFire=2',
  },
  {
    question: 'laboratory-number',
    inputs:
      'report=plates&plates=1+0.1+12%0A1+0.1+15%0A1:10+0.1+2%0A1:10+0.1+1&suspension=20&amount=10&unit=g&parts=5&countLowest=1&countHighest=150&laboratory=invented&method=culture&material=honey&statedOn=2026-01-10&source=invented&classes=0+few%0A100+some',
  },
  {
    question: 'burn-and-bury',
    inputs:
      'way=irradiate&beesDead=yes&freeOfHoney=yes&boxes=5000&boxesPerUnit=2&boxKilograms=10&unitHeight=0.5&unitsPerLayer=4&leastDose=15',
  },
  { question: 'when-laid', inputs: 'stage=capped&seenOn=2026-06-21' },
  { question: 'earliest-sign', inputs: 'exposedOn=2026-05-01' },
  {
    question: 'this-season',
    inputs: 'countedFrom=2026-07-01&firstLookAfterDays=40&looks=20&daysBetweenLooks=30&lastEggsOn=2026-09-20',
  },
  {
    question: 'colony-strength',
    inputs: 'frame=Langstroth+deep&covered=18&beesPerArea=130&error=0.15&eggs=1&larvae=2&capped=4&cellsPerArea=4',
  },
];
