import { wireChecks } from './wire.checks.ts';

export const conductorsBook = [...wireChecks];
