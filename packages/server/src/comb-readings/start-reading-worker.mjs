// A thread does not inherit the loader of TypeScript files: it takes it up itself, then begins the work.
import { register } from 'tsx/esm/api';

register();
await import('./reading-worker.ts');
