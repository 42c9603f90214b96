import { checkLaw } from '../check.ts';
import { fuseAdiabaticTime, fuseFastestOpening, fuseOpeningTime, fuseSlowestOpening } from './fuse-time.ts';

const ATOF = 'Littelfuse ATOF 287 data sheet, time gates';
const MAXI = 'Littelfuse MAXI 299 data sheet, 40 A part, time gates';
const MINI = 'Littelfuse 297 data sheet (2024), 3 A part: melting I²t 20 A²s';
const blade = (share: number) => ({ family: 'blade' as const, share });
const large = (share: number) => ({ family: 'large blade' as const, share });

export const fuseTimeChecks = [
  checkLaw(fuseOpeningTime, [
    {
      case: 'at 600 %, where the 3 A miniature melts in I²t/I² = 20/18² s',
      source: MINI,
      kind: 'published',
      args: blade(6),
      expected: 20 / 18 ** 2,
      allowed: 0.1,
    },
    {
      case: 'at 350 %, where the 3 A miniature melts in I²t/I² = 20/10.5² s',
      source: MINI,
      kind: 'published',
      args: blade(3.5),
      expected: 20 / 10.5 ** 2,
      allowed: 0.105,
      because: 'the middle of a gate is only known as well as the melting energies of two families of fuse agree',
    },
    {
      case: 'at 200 %, large blade: middle of 2 s and 50 s on a logarithmic scale',
      source: MAXI,
      kind: 'published',
      args: large(2),
      expected: 10,
      allowed: 1e-6,
    },
  ]),
  checkLaw(fuseFastestOpening, [
    {
      case: '135 %: not before 0.75 s',
      source: ATOF,
      kind: 'published',
      args: blade(1.35),
      expected: 0.75,
      allowed: 1e-6,
    },
    {
      case: '160 %: not before 0.25 s',
      source: ATOF,
      kind: 'published',
      args: blade(1.6),
      expected: 0.25,
      allowed: 1e-6,
    },
    {
      case: 'large blade at 350 %: not before 0.2 s',
      source: MAXI,
      kind: 'published',
      args: large(3.5),
      expected: 0.2,
      allowed: 1e-6,
    },
  ]),
  checkLaw(fuseSlowestOpening, [
    { case: '200 %: open within 5 s', source: ATOF, kind: 'published', args: blade(2), expected: 5, allowed: 1e-6 },
    {
      case: '600 %: open within 0.15 s',
      source: ATOF,
      kind: 'published',
      args: blade(6),
      expected: 0.15,
      allowed: 1e-6,
    },
    {
      case: 'large blade at 135 %: open within 1800 s',
      source: MAXI,
      kind: 'published',
      args: large(1.35),
      expected: 1800,
      allowed: 1e-6,
    },
  ]),
  checkLaw(fuseAdiabaticTime, [
    {
      case: 'a rectangle of 10 A for 10 ms is 1 A²s, so a 4.5 A fuse of 1 A²s melts then',
      source: 'Littelfuse, Fuseology selection guide (2017), chart 1',
      kind: 'published',
      args: { meltingEnergy: 1, current: 10, rating: 4.5 },
      expected: 0.01,
      allowed: 1e-6,
    },
    {
      case: '40 A large blade of 8500 A²s at 600 %',
      source: 'Littelfuse MAXI 299 data sheet: melting I²t 8500 A²s; divided by 240² by hand',
      kind: 'published',
      args: { meltingEnergy: 8500, current: 240, rating: 40 },
      expected: 0.1476,
      allowed: 0.001,
    },
  ]),
];
