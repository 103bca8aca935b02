import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { precompressed } from './precompressed.ts';
import { withoutJsonSchema } from './without-json-schema.ts';

const office = process.env.COMBSIDE_OFFICE ?? 'http://127.0.0.1:4680';

export default defineConfig({
  plugins: [
    react(),
    withoutJsonSchema(),
    VitePWA({
      // A new version waits until the person says so: a swap in the middle of an examination would surprise.
      registerType: 'prompt',
      injectRegister: false,
      manifest: {
        name: 'Combside',
        short_name: 'Combside',
        description: 'Inspection of apiaries for notifiable brood disease',
        start_url: '/hive',
        display: 'standalone',
        background_color: '#FBF8F1',
        theme_color: '#FBF8F1',
        icons: [
          { src: '/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
          { src: '/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
        ],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,woff2,wasm,svg,png,ttf,json}'],
        maximumFileSizeToCacheInBytes: 20 * 1024 * 1024,
        importScripts: ['/hold-during-visit.js'],
        navigateFallback: '/index.html',
        navigateFallbackDenylist: [/^\/api\//],
        clientsClaim: true,
        skipWaiting: false,
        // Its map names the builder's own folders.
        sourcemap: false,
      },
    }),
    precompressed(),
  ],
  worker: { format: 'es', plugins: () => [withoutJsonSchema()] },
  build: {
    target: 'es2022',
    sourcemap: true,
    rolldownOptions: {
      output: {
        // The phone takes every kind of entry with its first load; a file for each would only be packed worse.
        codeSplitting: { groups: [{ name: 'kinds', test: /[/\\]packages[/\\]record[/\\]src[/\\]kinds[/\\]/ }] },
      },
    },
  },
  // The office only takes what comes from its own pages; while developing, these are served from elsewhere.
  server: { proxy: { '/api': { target: office, changeOrigin: true, headers: { origin: office } } } },
});
