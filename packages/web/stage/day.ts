/** The day on which everything on the stage happens, as in the journeys: whenever the tests run. */
export const stageDay = '2026-06-02';

/** Time zone of the pages on the stage. */
export const stageZone = 'Europe/Berlin';

/** When a screen is opened, as an instant: late in the morning, in that zone and at Greenwich on the same day. */
export const firstInstant = `${stageDay}T09:30:00.000Z`;
