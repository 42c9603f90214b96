#!/usr/bin/env node
/** The installed command. It stands here and not in dist, so that it is there to be linked before the first build. */
import { existsSync } from 'node:fs';

const main = new URL('../dist/main.js', import.meta.url);
if (existsSync(main)) {
  await import(main.href);
} else {
  console.error('The program is not built yet. Build it with: npm run build');
  process.exitCode = 2;
}
