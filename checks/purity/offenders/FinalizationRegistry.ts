export const offence = new FinalizationRegistry(() => {});
