import './node-version.mjs';

const { startCombside } = await import('./start-combside.mjs');
await startCombside(process.argv.slice(2));
