import type { SourcedValue } from '@combside/sources/sourced-value';

/** Limits at which a warning is spoken. An agency sets its own; none of them ever blocks. */
export interface VisitSettings {
  /** Below this air temperature hives are better left shut. */
  readonly coldBelowCelsius: SourcedValue;
  /** Below this most bees do not fly. */
  readonly noFlightBelowCelsius: SourcedValue;
  /** Months (1-12, northern) in which brood enough to judge is expected; six months later in the south. */
  readonly broodFromMonth: SourcedValue;
  readonly broodToMonth: SourcedValue;
  /** A site not confirmed for so long is said to be so. */
  readonly siteConfirmedWithinDays: SourcedValue;
  /** A position less certain than this is said to be so. */
  readonly positionWithinMetres: SourcedValue;
  /** After honey was taken, looking again is better put off so long. */
  readonly afterHoneyDays: SourcedValue;
}

export const usualSettings: VisitSettings = {
  coldBelowCelsius: { value: 15, unit: 'degrees Celsius', standing: 'published', sources: ['APISAV'] },
  noFlightBelowCelsius: {
    value: 12,
    low: 10,
    high: 12,
    unit: 'degrees Celsius',
    standing: 'published',
    sources: ['APISAV'],
    doubts: 'printed as 10 to 12',
  },
  broodFromMonth: { value: 3, unit: 'month', standing: 'setting', sources: [] },
  broodToMonth: {
    value: 10,
    unit: 'month',
    standing: 'setting',
    sources: ['NZ-FREQ'],
    doubts: 'late autumn is a good time to find abnormal cells among the little brood that is left [NZ-FREQ]',
  },
  siteConfirmedWithinDays: { value: 365, unit: 'days', standing: 'setting', sources: [] },
  positionWithinMetres: { value: 100, unit: 'm', standing: 'setting', sources: [] },
  afterHoneyDays: {
    value: 30,
    unit: 'days',
    standing: 'published',
    sources: ['NZ-HONEY'],
    doubts: 'printed as "within about a month"',
  },
};
