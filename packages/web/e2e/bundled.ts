import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { build } from 'vite';

/** A made-up address of the browser's own machine, where a page counts as secure; nothing listens there. */
export const bundledAddress = 'http://localhost:4999';

/** Bundles one module with all it imports, in memory. @param entry path below this folder */
export async function bundled(entry: string): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      target: 'es2022',
      lib: { entry: join(import.meta.dirname, entry), formats: ['es'], fileName: 'bundle' },
    },
  });
  const outputs = Array.isArray(made) ? made : [made];
  for (const output of outputs) {
    if (!('output' in output)) continue;
    for (const part of output.output) if (part.type === 'chunk' && part.isEntry) return part.code;
  }
  throw new Error(`no bundle came of ${entry}`);
}

/** Opens an empty page, of the made-up address, that runs the bundle. */
export async function openBundled(page: Page, code: string): Promise<void> {
  await page.route(`${bundledAddress}/**`, (route) => {
    const isScript = route.request().url().endsWith('/bundle.js');
    return route.fulfill(
      isScript
        ? { contentType: 'text/javascript', body: code }
        : {
            contentType: 'text/html',
            body: '<!doctype html><title>bundle</title><script type="module" src="/bundle.js"></script>',
          },
    );
  });
  await page.goto(bundledAddress);
  await page.waitForFunction(() => 'ready' in globalThis);
}
