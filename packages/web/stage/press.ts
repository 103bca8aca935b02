import { expect } from 'vitest';

/** Presses what a selector finds, as soon as it is there and can be pressed. */
export async function press(selector: string): Promise<void> {
  const found = () => document.querySelector<HTMLElement>(`:is(${selector}):not(:disabled)`);
  await expect.poll(found, { timeout: 8_000 }).not.toBeNull();
  found()?.click();
}
