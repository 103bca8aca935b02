import { get } from 'node:http';
import type { Page } from '@playwright/test';

/**
 * Opens an address in a page that knows nothing of the program yet, and says what script that took.
 *
 * @param shown waits until what the person came for is on the screen
 * @returns bytes as the server sends them packed with gzip, by address; scripts of workers are among them
 */
export async function scriptsOfFirstLoad(
  page: Page,
  address: string,
  shown: () => Promise<void>,
): Promise<Map<string, number>> {
  const scripts = new Set<string>();
  // Heard of the context, so that scripts of workers are counted too; their size is not told, so all are asked for again.
  page.context().on('request', (request) => {
    if (/[.]js($|[?])/.test(request.url())) scripts.add(request.url());
  });
  await page.goto(address);
  await shown();
  await page.waitForLoadState('networkidle');
  const sizes = new Map<string, number>();
  for (const script of scripts) sizes.set(script, await bytesAsGzip(script));
  return sizes;
}

/** How many bytes the server sends for this address when asked for gzip. */
function bytesAsGzip(address: string): Promise<number> {
  return new Promise((resolve, reject) => {
    get(address, { headers: { 'accept-encoding': 'gzip' } }, (answer) => {
      let bytes = 0;
      answer.on('data', (part: Buffer) => {
        bytes += part.length;
      });
      answer.on('end', () =>
        answer.headers['content-encoding'] === 'gzip' ? resolve(bytes) : reject(new Error(`${address} came unpacked`)),
      );
      answer.on('error', reject);
    }).on('error', reject);
  });
}
