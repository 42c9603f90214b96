#!/usr/bin/env node
/** The longrein command: makes the ports and calls the program. */
import { realIo } from './io.ts';
import { run } from './run.ts';

process.exitCode = await run(realIo(), process.argv.slice(2));
