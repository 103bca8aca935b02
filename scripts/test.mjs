import './node-version.mjs';

const { testCombside } = await import('./test-combside.mjs');
await testCombside();
