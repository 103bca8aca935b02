import { findBrowser } from '../e2e/browser.ts';

/** Before the first screen: finds the browser of the journeys, and names it to whoever starts it. */
export default async function nameBrowser(): Promise<void> {
  process.env.COMBSIDE_BROWSER = await findBrowser();
}
