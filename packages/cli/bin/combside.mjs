#!/usr/bin/env node
// The command line is TypeScript source; tsx lets Node run it as it stands, so there is nothing to build first.
import { register } from 'tsx/esm/api';

register();
await import('../src/combside.ts');
