/** What is done first while a suspicion stands, in this order. */
export const firstSteps = ['close-the-hive', 'move-nothing', 'take-a-specimen', 'clean-down', 'notify'] as const;

export type FirstStep = (typeof firstSteps)[number];
