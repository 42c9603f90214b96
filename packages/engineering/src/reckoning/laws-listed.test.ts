/**
 * Goal: a sum that uses a law lists it, so that its explanation names the law’s source and what it leaves out.
 * Method: every law of the house is replaced by one that notes who calls it; then all sums of every vehicle kept with
 * the program are worked out over a few cases.
 */
import { readdirSync, readFileSync } from 'node:fs';
import type * as Laws from '@longrein/laws';
import { expect, it, vi } from 'vitest';
import type { Sums } from './graph.ts';
import { vehicleOf } from './planted.fixture.ts';
import { study } from './study.ts';
import type { Route } from './sum.ts';
import { SUMS } from './sums/all.ts';

const watch = vi.hoisted(() => ({ called: [] as string[] }));

vi.mock('@longrein/laws', async (original) => {
  const real = await original<typeof Laws>();
  return Object.fromEntries(
    Object.entries(real).map(([name, value]) => {
      if (!real.isLaw(value)) return [name, value];
      const noting = (args: unknown) => {
        watch.called.push(value.facts.id);
        return value(args);
      };
      return [name, Object.assign(noting, { facts: value.facts, bare: value.bare })];
    }),
  );
});

const ROOT = new URL('../../../../', import.meta.url);
const FOLDERS = [new URL('examples/reedmere/', ROOT), new URL('tests/fixtures/vehicles/', ROOT)];
const FILES = FOLDERS.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => new URL(name, folder)),
);

it('every sum lists the laws it calls, for every vehicle kept with the program', () => {
  const seen = new Map<string, { route: Route; called: Set<string> }>();
  const noting = (id: string, route: Route): Route => ({
    ...route,
    value: (x, layout) => {
      watch.called.length = 0;
      try {
        return route.value(x, layout);
      } finally {
        const key = `${id}${route.name === undefined ? '' : `, route ${route.name}`}`;
        const entry = seen.get(key) ?? { route, called: new Set() };
        for (const law of watch.called) entry.called.add(law);
        seen.set(key, entry);
      }
    },
  });
  const watched = Object.fromEntries(
    Object.entries(SUMS).map(([id, sum]) => [id, { ...sum, routes: sum.routes.map((route) => noting(id, route)) }]),
  ) as unknown as Sums;
  for (const file of FILES) study(watched, vehicleOf(readFileSync(file, 'utf8')), { cases: 5 });

  const calls = [...seen.values()].reduce((total, { called }) => total + called.size, 0);
  expect(calls).toBeGreaterThan(100);
  const unlisted = [...seen].flatMap(([key, { route, called }]) => {
    const listed = new Set(route.laws.map(({ facts }) => facts.id));
    return [...called].filter((law) => !listed.has(law)).map((law) => `${key} calls ${law}`);
  });
  expect(unlisted).toEqual([]);
});
