/**
 * Goal: every mistake at the keyboard is answered on the error output with what is accepted, without a stack, and the
 * exit code tells programs what happened.
 * Method: the command in a world of files in memory, once for each mistake.
 */
import { SUBJECTS } from '@longrein/engineering';
import { describe, expect, it } from 'vitest';
import { COMMANDS } from '../../packages/cli/src/run.ts';
import { example, longrein } from './fake-io.ts';

const QUICK = ['--cases', '20'];
const SEDGE = example('sedge');
const fileOf = (text: string) => ({ files: { 'mine.json': text } });

describe('exit codes', () => {
  it('are 0 where all that decides holds or is tight, 1 where something fails, 2 for bad input', async () => {
    expect((await longrein(['reckon', 'sedge.json', ...QUICK])).exit).toBe(0);
    expect((await longrein(['reckon', 'teasel.json', ...QUICK])).exit).toBe(1);
    expect((await longrein(['reckon', 'nothing.json'])).exit).toBe(2);
  });

  it('are 1 also where a failing vehicle is asked for a subject that holds', async () => {
    const { exit, out } = await longrein(['reckon', 'teasel.json', '--subject', 'safety', ...QUICK]);
    expect(exit).toBe(1);
    expect(out).toContain('✗ fails');
  });

  it('are 1 where something that decides is unsettled', async () => {
    const dossier = JSON.parse(SEDGE);
    for (const part of ['fits', 'readings']) delete dossier[part];
    delete dossier.donor.drive.motor;
    delete dossier.donor.body.runTime;
    const { exit, out } = await longrein(['reckon', 'mine.json', ...QUICK], fileOf(JSON.stringify(dossier)));
    expect(exit).toBe(1);
    expect(out).toMatch(/[1-9]\d* unsettled/);
    expect(out).toContain('(motor.resistance)');
  });

  it('are 0 for commands that only tell, whatever they tell', async () => {
    for (const words of [
      ['explain', 'teasel.json', 'pack.runTime'],
      ['measure-next', 'teasel.json'],
      ['limits', 'teasel.json'],
    ]) {
      expect((await longrein([...words, ...QUICK])).exit, words.join(' ')).toBe(0);
    }
    expect((await longrein(['validate', 'teasel.json'])).exit).toBe(0);
    expect((await longrein(['checks', '--law', 'duty-ceiling'])).exit).toBe(0);
  });
});

describe('a mistake', () => {
  const reckon = (...words: string[]) => ['reckon', 'sedge.json', ...words];
  const MISTAKES: readonly (readonly [string, readonly string[], RegExp])[] = [
    ['an unknown command', ['limitz'], /no command "limitz"\. Perhaps limits\?.*Accepted: new, validate, reckon/s],
    ['help on an unknown command', ['help', 'drive'], /no command "drive"/],
    [
      'an unknown option',
      reckon('--fast'),
      /Unknown option '--fast'.*Accepted: --cases.*--help.*Usage: longrein reckon FILE/s,
    ],
    ['an option of another command', ['validate', 'sedge.json', '--seed', '1'], /'--seed'.*Accepted: --shelf, --json/s],
    ['an option without its value', reckon('--cases'), /--cases.*Accepted/s],
    ['a value for an option without one', reckon('--all=yes'), /--all/],
    ['no dossier', ['reckon'], /Which dossier\? Usage: longrein reckon FILE/],
    ['two dossiers', reckon('teasel.json'), /One dossier at a time; found also teasel\.json/],
    ['a missing file', ['reckon', 'nothing.json'], /Cannot read nothing\.json: there is no such file or folder\./],
    ['a folder as a file', ['validate', '.'], /Cannot read \.: it is a folder\./],
    ['an unknown subject', reckon('--subject', 'brakes'), /no subject "brakes"\. Accepted: mass and balance, drive/],
    ['cases in words', reckon('--cases', 'many'), /--cases is "many"\. Accepted: a whole number from 20 to 100000/],
    ['too few cases', reckon('--cases', '19'), /"19"\. Accepted: a whole number from 20/],
    ['too many cases', reckon('--cases', '100001'), /Accepted: a whole number from 20 to 100000/],
    ['half a case', reckon('--cases', '20.5'), /"20\.5"/],
    ['a negative seed', reckon('--seed=-1'), /--seed is "-1"\. Accepted: a whole number from 0/],
    ['a seed that no number holds', reckon('--seed', '9007199254740993'), /--seed is "9007199254740993"/],
    ['nothing to explain', ['explain', 'sedge.json'], /Explain what\?.*reckon FILE --all/s],
    ['two things to explain', ['explain', 'sedge.json', 'a', 'b'], /One id at a time; found also b/],
    ['an unknown finding', ['explain', 'sedge.json', 'brownout', ...QUICK], /"brownout".*Near it: brown-out-stall/s],
    ['an id near to nothing', ['explain', 'sedge.json', 'zzz', ...QUICK], /"zzz".*reckon FILE --all prints the ids/s],
    ['half a level', ['explain', 'sedge.json', 'pack.runTime', '--depth', '1.5'], /--depth is "1\.5"/],
    ['an unknown part', ['shelf', 'lipo2s'], /no kind or part "lipo2s".*Kinds: pack.*lipo-2s-2200/s],
    ['two parts', ['shelf', 'pack', 'fuse'], /One kind or id at a time/],
    [
      'an unknown shelf',
      ['shelf', '--shelf', 'attic'],
      /Cannot read the folder attic: there is no such file or folder/,
    ],
    ['an unknown law', ['checks', '--law', 'dutyceiling'], /no check of "dutyceiling"\. Near it: duty-ceiling/],
    ['a law without its option', ['checks', 'duty-ceiling'], /--law ID/],
    ['a key and a dossier', ['limits', 'sedge.json', '--new-key', 'k'], /only makes a key; leave sedge\.json out/],
    ['a missing key', ['limits', 'sedge.json', '--key', 'k'], /Cannot read k: .*--new-key k" makes one/s],
    ['a folder that is not there', ['new', 'attic/toy.json'], /no folder attic to write attic\/toy\.json in/],
    ['a file that is there', ['new', 'sedge.json'], /sedge\.json is there already and is not overwritten/],
  ];

  it.each(MISTAKES)(
    'is answered with what is accepted, exit 2, nothing else printed or written: %s',
    async (_what, words, says) => {
      const { exit, out, err, written } = await longrein(words);
      expect(err.replaceAll(/\s*\n\s*/g, ' ')).toMatch(new RegExp(says.source, says.flags.replace('s', '')));
      expect(exit).toBe(2);
      expect(out).toBe('');
      expect(err).not.toMatch(/^\s+at /m);
      expect(written.size).toBe(0);
    },
  );

  it('in a subject is answered with every subject there is', async () => {
    const { err } = await longrein(['reckon', 'sedge.json', '--subject', 'x']);
    for (const subject of Object.keys(SUBJECTS)) expect(err.replaceAll('\n', ' ')).toContain(subject);
  });
});

describe('a broken dossier', () => {
  const faults = async (text: string) => {
    const { exit, out, err } = await longrein(['validate', 'mine.json'], fileOf(text));
    expect(exit).toBe(2);
    expect(out).toBe('');
    return err.replaceAll(/\s+/g, ' ');
  };
  const lineOf = (part: string) => SEDGE.slice(0, SEDGE.indexOf(part)).split('\n').length;

  it('is told by JSON pointer, line, column, what was found and what to write', async () => {
    const err = await faults(SEDGE.replace('"1.62 kg ± 5 g"', '"1,62 kg ± 5 g"'));
    expect(err).toContain('mine.json: one fault.');
    expect(err).toContain('/donor/body/mass');
    expect(err).toMatch(new RegExp(`line ${lineOf('"1.62 kg')}, column \\d+`));
    expect(err).toContain('1,62 kg');
    expect(err).toContain('decimal point');
  });

  it('is told with all its faults at once', async () => {
    const err = await faults(SEDGE.replace('"1.62 kg ± 5 g"', '"1.62 s"').replace('"30 … 55 %"', '"30 … 55"'));
    expect(err).toContain('2 faults');
    expect(err).toContain('/donor/body/mass');
    expect(err).toContain('/service/want/moving');
  });

  it('is no dossier where it is no JSON, or a JSON of something else', async () => {
    expect(await faults(SEDGE.slice(0, 400))).toMatch(/line \d+/);
    expect(await faults('[]')).toMatch(/fault/);
    expect(await faults('')).toMatch(/fault/);
  });

  it.each(
    COMMANDS.filter(({ usage }) => usage.startsWith('FILE'))
      .map(({ name }) => name)
      .filter((name) => name !== 'new'),
  )('stops the command %s in the same way', async (name) => {
    const { exit, err } = await longrein([name, 'mine.json', 'x'].slice(0, name === 'explain' ? 3 : 2), fileOf('{}'));
    expect(exit).toBe(2);
    expect(err).toContain('mine.json');
    expect(err).not.toMatch(/^\s+at /m);
  });
});
