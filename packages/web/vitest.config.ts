import react from '@vitejs/plugin-react';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { browserFlags } from './e2e/browser.ts';
import { stageZone } from './stage/day.ts';
import { answersWorkers } from './stage/register-rows.ts';
import { withoutJsonSchema } from './without-json-schema.ts';

/** Screens, each by itself on the stage (`stage/README.md`), in the browser of the journeys. */
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), withoutJsonSchema(), answersWorkers()],
  worker: { format: 'es', plugins: () => [withoutJsonSchema()] },
  // All of the program's libraries at once, before the first screen: one found on the way would load the page anew.
  optimizeDeps: { entries: ['index.html', 'src/**/*-worker.ts', 'src/**/*.component.test.tsx'] },
  test: {
    name: 'screens',
    include: ['src/**/*.component.test.tsx'],
    // One record for the run; each screen opens a phone of its own on it.
    globalSetup: ['./stage/find-browser.ts', './stage/plant-record.ts', './stage/plant-comb.ts'],
    // A page for each core: one works while the other waits.
    maxWorkers: 2,
    testTimeout: 60_000,
    browser: {
      enabled: true,
      headless: true,
      screenshotFailures: false,
      provider: playwright({
        launchOptions: {
          // Asked for when it is started: whoever runs one room of the house needs no browser.
          get executablePath() {
            return process.env.COMBSIDE_BROWSER ?? '';
          },
          args: browserFlags(),
        },
        contextOptions: {
          locale: 'en-GB',
          timezoneId: stageZone,
          permissions: ['geolocation'],
          geolocation: { latitude: 56.01, longitude: 3.01, accuracy: 8 },
        },
      }),
      instances: [{ browser: 'chromium' }],
    },
  },
});
