import { defineConfig } from 'vitest/config';

// A time zone nobody works in (12:45 ahead): what silently takes the machine's zone fails here and not at a district's border.
// COMBSIDE_ZONE names another one.
process.env.TZ = process.env.COMBSIDE_ZONE ?? 'Pacific/Chatham';

// One project per package, so that `npx vitest --project science` runs one room of the house.
const packages = [
  'calendar',
  'sources',
  'words',
  'science',
  'record',
  'law',
  'casework',
  'papers',
  'contract',
  'server',
  'web',
  'cli',
];

export default defineConfig({
  test: {
    // Every core: nothing else runs beside the tests, and one kept free would halve two.
    maxWorkers: '100%',
    projects: [
      ...packages.map((name) => ({
        test: {
          name,
          root: `packages/${name}`,
          include: ['src/**/*.test.{ts,tsx}'],
          exclude: ['**/*.component.test.tsx'],
          environment: 'node',
          // No file leaves anything behind for the next, so none need load everything anew.
          isolate: false,
          testTimeout: 30_000,
          hookTimeout: 60_000,
          // One PostgreSQL for the run; each test copies a database of its own.
          ...(name === 'server' ? { globalSetup: './src/store/acceptance/clusters.ts' } : {}),
        },
      })),
      {
        test: {
          name: 'checks',
          root: 'checks',
          include: ['**/*.test.ts'],
          exclude: ['**/offenders/**'],
          environment: 'node',
          isolate: false,
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
      'packages/web/vitest.config.ts',
    ],
  },
});
