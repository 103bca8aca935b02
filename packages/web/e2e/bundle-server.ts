import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build, type Plugin } from 'vite';

const server = join(import.meta.dirname, '../../server/src/start.ts');
/** Below the house, so that the two packages that it does not hold, Sharp and PostgreSQL's programs, are found. */
const folder = join(import.meta.dirname, '../test-results/server');

/**
 * Bundles the server with everything it imports into one file, once for a run: to read some two thousand files at every
 * start takes two thirds of the start. What the server reads beside its sources it reads there still; only the pages, which
 * `start.ts` looks for from where it stands itself, must be named to it.
 *
 * @returns path of the bundle, for Node without a loader
 */
export async function bundleServer(): Promise<string> {
  await build({
    configFile: false,
    logLevel: 'error',
    plugins: [whereItStood],
    ssr: { noExternal: true, external: ['sharp'] },
    build: {
      ssr: server,
      outDir: folder,
      emptyOutDir: true,
      minify: false,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'start.mjs', codeSplitting: false } },
    },
  });
  return join(folder, 'start.mjs');
}

/** Leaves every module its own address, by which it finds its neighbours; the first is started, and has the bundle's. */
const whereItStood: Plugin = {
  name: 'where-it-stood',
  enforce: 'pre',
  transform: {
    filter: { id: /\/packages\/[^/]+\/src\/[^?]+[.]ts$/ },
    handler: (code, id) =>
      id === server
        ? undefined
        : { code: code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href)), map: null },
  },
};
