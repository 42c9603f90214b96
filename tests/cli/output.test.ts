/**
 * Goal: what is printed teaches, fits the width, means the same without colour, and is data where data was asked for.
 * Method: every command with the examples in memory; colour codes are taken out and the rest compared.
 */
import { SUM_IDS } from '@longrein/engineering';
import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../packages/cli/src/run.ts';
import { longrein } from './fake-io.ts';

const QUICK = ['--cases', '60'];
const ESCAPE = String.fromCharCode(27);
const CODE = new RegExp(`${ESCAPE}\\[\\d+m`, 'g');

/** One run of every command that prints for people. */
const RUNS: readonly (readonly string[])[] = [
  [],
  ...COMMANDS.map(({ name }) => ['help', name]),
  ['reckon', 'sedge.json', ...QUICK],
  ['reckon', 'teasel.json', '--all', ...QUICK],
  ['reckon', 'burdock.json', '--subject', 'drive', ...QUICK],
  ['explain', 'sedge.json', 'brown-out-stall', ...QUICK],
  ['explain', 'teasel.json', 'pack.runTime', '--depth', '1', ...QUICK],
  ['measure-next', 'burdock.json', ...QUICK],
  ['validate', 'burdock.json'],
  ['shelf'],
  ['shelf', 'pack'],
  ['shelf', 'lipo-2s-2200'],
  ['limits', 'sedge.json', ...QUICK],
  ['limitz'],
  ['reckon', 'sedge.json', '--fast'],
];

describe('help', () => {
  it.each(COMMANDS)(
    'of $name is the same by every way of asking, and teaches by an example',
    async ({ name, usage }) => {
      const [plain, long, short] = await Promise.all(
        [
          ['help', name],
          [name, '--help'],
          [name, '-h'],
        ].map((words) => longrein(words)),
      );
      expect(plain?.exit).toBe(0);
      expect(plain?.out).toContain(`Example:  longrein ${name}`);
      expect(plain?.out.replaceAll(/\s+/g, ' ')).toContain(`longrein ${name} ${usage}`);
      expect(long?.out).toBe(plain?.out);
      expect(short?.out).toBe(plain?.out);
    },
  );

  it('begins with what to do first, and lists every command', async () => {
    const { out, exit } = await longrein([]);
    expect(exit).toBe(0);
    for (const { name, summary } of COMMANDS) expect(out.replaceAll(/\s+/g, ' ')).toContain(`${name} ${summary}`);
    expect(out).toContain('Begin with:  longrein new my-toy.json');
    expect((await longrein(['help'])).out).toBe(out);
    expect((await longrein(['--help'])).out).toBe(out);
  });

  it('names every option of the command in its usage', () => {
    for (const { name, usage, options } of COMMANDS) {
      for (const option of Object.keys(options)) expect(usage, name).toContain(`--${option}`);
    }
  });

  it('tells the version', async () => {
    expect((await longrein(['--version'])).out).toBe('longrein 1.2.3\n');
  });
});

describe('colour', () => {
  it.each(RUNS)('says nothing that is not said without it: longrein %s %s %s', async (...words) => {
    const [coloured, plain] = await Promise.all([true, false].map((colour) => longrein(words, { colour })));
    expect(plain?.out).not.toContain(ESCAPE);
    expect(plain?.err).not.toContain(ESCAPE);
    expect(coloured?.out.replaceAll(CODE, '')).toBe(plain?.out);
    expect(coloured?.err.replaceAll(CODE, '')).toBe(plain?.err);
  });

  it('is there where it may be, ends where it began, on each line for itself', async () => {
    const { out } = await longrein(['reckon', 'teasel.json', ...QUICK], { colour: true });
    expect(out.match(CODE)?.length).toBeGreaterThan(50);
    for (const line of out.split('\n')) {
      const codes = (line.match(CODE) ?? []).map((code) => Number(code.slice(2, -1)));
      const open = codes.filter((code) => ![39, 22].includes(code)).length;
      expect(codes.length - open, line).toBe(open);
    }
  });

  it('stands beside a mark and a word for every state', async () => {
    const { out } = await longrein(['reckon', 'teasel.json', ...QUICK]);
    for (const state of ['✓ holds', '~ tight', '✗ fails', '– informs']) expect(out).toContain(`  ${state} `);
  });
});

describe('width', () => {
  it.each(RUNS)('is kept by every line: longrein %s %s %s', async (...words) => {
    for (const width of [60, 80, 110]) {
      const { out, err } = await longrein(words, { width });
      // The table of limits is as wide as its columns; a path or an id cannot be broken.
      const tables = words[0] === 'limits' && out.includes('quantile');
      const wide = `${out}${err}`.split('\n').filter((line) => [...line].length > Math.max(width, tables ? 80 : 0));
      const breakable = wide.filter((line) => /\S {1}\S/.test(line.trim().slice(width - 40)));
      expect(breakable, `at ${width}`).toEqual([]);
    }
  });

  it('is used: a wider page has fewer lines', async () => {
    const lines = async (width: number) =>
      (await longrein(['reckon', 'teasel.json', ...QUICK], { width })).out.split('\n').length;
    expect(await lines(110)).toBeLessThan(await lines(60));
  });
});

describe('JSON', () => {
  const json = async (...words: string[]) => {
    const { out, err } = await longrein([...words, '--json']);
    expect(err).toBe('');
    return JSON.parse(out);
  };

  it('of reckon has the promised keys, and the findings of one subject where one was asked for', async () => {
    const told = await json('reckon', 'sedge.json', ...QUICK, '--seed', '7');
    expect(Object.keys(told)).toEqual(['name', 'invented', 'cases', 'seed', 'assumptions', 'sums', 'findings']);
    expect(told).toMatchObject({ name: 'Sedge', invented: true, cases: 60, seed: 7 });
    const part = await json('reckon', 'sedge.json', ...QUICK, '--subject', 'heat');
    expect(part.findings.length).toBeGreaterThan(2);
    expect(part.findings.length).toBeLessThan(told.findings.length);
    expect(new Set(part.findings.map((finding: { subject: string }) => finding.subject))).toEqual(new Set(['heat']));
  });

  it('of explain is a tree for a sum, and two for a finding, without a number that is none', async () => {
    const sum = await json('explain', 'sedge.json', 'pack.runTime', ...QUICK);
    expect(sum).toMatchObject({
      kind: 'sum',
      id: 'pack.runTime',
      uses: expect.any(Array),
      formula: expect.any(String),
    });
    for (const used of sum.uses)
      expect(Object.keys(used)).toEqual(expect.arrayContaining(['kind', 'id', 'title', 'as']));
    const finding = await json('explain', 'sedge.json', 'brown-out-stall', ...QUICK);
    expect(Object.keys(finding).sort()).toEqual(['finding', 'has', 'need']);
    expect(finding.finding).not.toHaveProperty('verdicts');
  });

  it('of measure-next ranks, and says how to measure', async () => {
    const next = await json('measure-next', 'burdock.json', '--cases', '400');
    expect(Object.keys(next)).toEqual(['name', 'open', 'floor', 'ranked']);
    expect(Object.keys(next.ranked[0])).toEqual(['id', 'title', 'now', 'origin', 'settles', 'how', 'findings']);
  });

  it('of validate lists what is assumed, and of shelf every figure', async () => {
    const told = await json('validate', 'burdock.json');
    expect(Object.keys(told)).toEqual(['name', 'ok', 'stated', 'assumptions']);
    expect(Object.keys(told.assumptions[0])).toEqual(['id', 'title', 'value', 'because', 'how']);
    const [pack] = await json('shelf', 'lipo-2s-2200');
    expect(pack).toMatchObject({
      kind: 'pack',
      id: 'lipo-2s-2200',
      cells: 2,
      capacity: expect.stringMatching(/^2200 mAh/),
    });
  });

  it('of checks has a row for each check of a law', async () => {
    const rows = await json('checks', '--law', 'duty-ceiling');
    expect(rows.length).toBeGreaterThan(0);
    for (const row of rows) {
      expect(Object.keys(row)).toEqual(['law', 'source', 'kind', 'case', 'expected', 'ours', 'allowed', 'ok']);
      expect(row.law).toBe('duty-ceiling');
    }
  });
});

describe('what a reckoning prints', () => {
  it('tells the verdict under the name and again at the end, the same both times', async () => {
    const { out } = await longrein(['reckon', 'teasel.json', ...QUICK]);
    const verdicts = out.replaceAll(/\n(?!\S*Verdict)/g, ' ').match(/Verdict: .*?only inform\)/g);
    expect(verdicts).toHaveLength(2);
    expect(new Set(verdicts).size).toBe(1);
    expect(out.split('\n')[1]).toMatch(/^Verdict: ✗ fails/);
  });

  it('gives a remedy for what fails, none for what informs, and figures of everything with --all', async () => {
    const short = (await longrein(['reckon', 'teasel.json', ...QUICK])).out;
    const full = (await longrein(['reckon', 'teasel.json', '--all', ...QUICK])).out;
    const below = (text: string, mark: string) =>
      text
        .split('\n')
        .flatMap((line, i, all) =>
          line.startsWith(`  ${mark} `) ? [all.slice(i + 1).find((next) => !/^ {8,}/.test(next))] : [],
        );
    for (const next of below(short, '✗ fails')) expect(next).toMatch(/^ {6}\S/);
    for (const mark of ['– informs', '✓ holds']) {
      for (const next of below(short, mark)) expect(next).not.toMatch(/^ {6}\S/);
      for (const next of below(full, mark)) expect(next).toMatch(/^ {6}(?:Has|Because|For the same)/);
    }
    expect(short.match(/Remedy: /g)?.length).toBe(short.match(/^ {2}(?:✗ fails|~ tight) /gm)?.length);
  });

  it('shows cautions only for what does not hold, and defers to local rules', async () => {
    const { out } = await longrein(['reckon', 'teasel.json', ...QUICK]);
    expect(out).toContain('Cautions for the work on what does not hold:');
    expect(out).toContain('Where local rules or a qualified person say otherwise, follow them.');
  });

  it('is the same for the same seed, and another for another', async () => {
    const told = async (...more: string[]) => (await longrein(['reckon', 'burdock.json', ...QUICK, ...more])).out;
    expect(await told()).toBe(await told('--seed', '1'));
    expect(await told('--seed', '2')).not.toBe(await told());
  });
});

describe('an explanation', () => {
  it('of a finding begins with its state, figures and remedy, and walks down to what was measured', async () => {
    const { out } = await longrein(['explain', 'teasel.json', 'brown-out-stall', ...QUICK]);
    expect(out).toMatch(
      /^A stall of the drive does not reset the board \[brown-out-stall\]\n {2}[✓~✗] \w+ \d+ of 100\n/,
    );
    for (const part of ['Has ', 'needs at least', 'It has\n', 'It needs at least\n', 'Caution: ', '(label, '])
      expect(out).toContain(part);
    expect(out).toMatch(/Remedy: |Should it fail: /);
  });

  it('tells each law in full once, and stops at the depth that was asked for', async () => {
    const deep = (await longrein(['explain', 'sedge.json', 'pack.runTime', ...QUICK])).out;
    const laws = deep.match(/Law: [^.]+\. /g) ?? [];
    expect(new Set(laws).size).toBe(laws.length);
    const flat = (await longrein(['explain', 'sedge.json', 'pack.runTime', '--depth', '0', ...QUICK])).out;
    expect(flat.match(/^ *- /gm)).toHaveLength(1);
    expect(deep.split('\n').length).toBeGreaterThan(5 * flat.split('\n').length);
  });

  it('can be given for every sum there is', async () => {
    for (const id of SUM_IDS.filter((_, i) => i % 9 === 0)) {
      const { exit, out } = await longrein(['explain', 'burdock.json', id, '--depth', '0', '--cases', '20']);
      expect(exit, id).toBe(0);
      expect(out, id).toMatch(/^- /);
    }
  });
});
