import { expect } from 'vitest';

/** Presses what a selector finds, as soon as it is there and can be pressed. */
export async function press(selector: string): Promise<void> {
  await expect.poll(() => document.querySelector(`:is(${selector}):not(:disabled)`), { timeout: 8_000 }).not.toBeNull();
  document.querySelector<HTMLElement>(selector)?.click();
}
