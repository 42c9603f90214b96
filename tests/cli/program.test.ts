/**
 * Goal: the program as it is started from a shell: its streams, its exit code, its files on a real disk.
 * Method: the entry point in a process of its own; the writer of files in a folder of its own.
 */
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { mayColour, progressLine, writeWhole } from '../../packages/cli/src/io.ts';
import { HOUSE } from '../../scripts/tree.ts';

const folder = mkdtempSync(join(tmpdir(), 'longrein-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const SOURCES = ['--conditions=longrein-src', '--import', 'tsx', 'packages/cli/src/main.ts'];
const longrein = (words: readonly string[], input = '') =>
  spawnSync(process.execPath, [...SOURCES, ...words], { cwd: HOUSE, encoding: 'utf8', input });

describe('the program', () => {
  it('prints findings on the standard output, plain where that is no terminal, and exits by them', () => {
    const { status, stdout, stderr } = longrein(['reckon', 'examples/reedmere/teasel.json', '--cases', '20']);
    expect(stderr).toBe('');
    expect(status).toBe(1);
    expect(stdout).toContain('Teasel');
    expect(stdout).not.toContain(String.fromCharCode(27));
  });

  it('prints a mistake on the error output, without a stack, and exits with 2', () => {
    const { status, stdout, stderr } = longrein(['reckon', 'nothing.json']);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toBe('Cannot read nothing.json: there is no such file or folder.\n');
  });

  it('writes no dossier where the input ends, and leaves nothing behind', () => {
    const { status, stderr } = longrein(['new', join(folder, 'toy.json')], 'Nettle\n1.6 kg\n');
    expect(status).toBe(2);
    expect(stderr).toContain('nothing was written');
    expect(readdirSync(folder)).toEqual([]);
  });

  it('ends quietly where its reader leaves early', () => {
    const command = [process.execPath, ...SOURCES, 'checks'].map((word) => `'${word}'`).join(' ');
    const { stdout, stderr } = spawnSync('sh', ['-c', `${command} | head -2`], { cwd: HOUSE, encoding: 'utf8' });
    expect(stdout.trimEnd().split('\n')).toHaveLength(2);
    expect(stderr).toBe('');
  });

  it('knows its version, that of the package', () => {
    const { version } = JSON.parse(readFileSync(join(HOUSE, 'packages/cli/package.json'), 'utf8'));
    expect(longrein(['--version']).stdout).toBe(`longrein ${version}\n`);
  });
});

describe('the installed command', () => {
  const bin = JSON.parse(readFileSync(join(HOUSE, 'packages/cli/package.json'), 'utf8')).bin.longrein;
  const start = (name: string, build?: string) => {
    const root = join(folder, name);
    mkdirSync(join(root, 'bin'), { recursive: true });
    cpSync(join(HOUSE, 'packages/cli', bin), join(root, bin));
    writeFileSync(join(root, 'package.json'), '{"type":"module"}');
    if (build !== undefined) {
      mkdirSync(join(root, 'dist'));
      writeFileSync(join(root, 'dist/main.js'), build);
    }
    return spawnSync(process.execPath, [join(root, bin), 'one', 'two'], { encoding: 'utf8' });
  };

  it('may be run, and hands its words to what was built', () => {
    expect(statSync(join(HOUSE, 'packages/cli', bin)).mode & 0o111).not.toBe(0);
    const { status, stdout } = start('built', 'console.log(process.argv.slice(2).join(" ")); process.exitCode = 1;');
    expect([status, stdout]).toEqual([1, 'one two\n']);
  });

  it('says how to build where nothing is built yet', () => {
    const { status, stderr } = start('unbuilt');
    expect(status).toBe(2);
    expect(stderr).toContain('npm run build');
  });
});

describe('writing a file', () => {
  const path = (name: string) => join(folder, name);

  it('is whole, with the rights that were asked for', () => {
    writeWhole(path('secret.key'), 'text\n', 0o600);
    expect(readFileSync(path('secret.key'), 'utf8')).toBe('text\n');
    expect(statSync(path('secret.key')).mode & 0o777).toBe(0o600);
  });

  it('keeps the rights of a file that was there, and leaves nothing else in the folder', () => {
    writeFileSync(path('old.json'), 'old');
    chmodSync(path('old.json'), 0o640);
    writeWhole(path('old.json'), 'new');
    expect(readFileSync(path('old.json'), 'utf8')).toBe('new');
    expect(statSync(path('old.json')).mode & 0o777).toBe(0o640);
    expect(readdirSync(folder).filter((name) => name.endsWith('.tmp'))).toEqual([]);
  });

  it('is not done at all where it cannot be done to the end', () => {
    mkdirSync(path('taken'));
    writeFileSync(path('taken/inside'), '');
    expect(() => writeWhole(path('taken'), 'text')).toThrow();
    expect(() => writeWhole(path('attic/file'), 'text')).toThrow(/ENOENT/);
    expect(readdirSync(folder).filter((name) => name.endsWith('.tmp'))).toEqual([]);
    expect(readdirSync(path('taken'))).toEqual(['inside']);
  });
});

describe('colour', () => {
  it.each([
    [{}, true, true],
    [{}, false, false],
    [{ NO_COLOR: '1' }, true, false],
    // As the convention has it, an empty NO_COLOR says nothing.
    [{ NO_COLOR: '' }, true, true],
    [{ TERM: 'dumb' }, true, false],
    [{ TERM: 'xterm' }, true, true],
  ])('with %j on a terminal: %s, is used: %s', (env, tty, used) => {
    expect(mayColour(env, tty)).toBe(used);
  });
});

describe('the progress of something long', () => {
  const watched = (times: readonly number[]) => {
    const [clock, written] = [[0, ...times], [] as string[]];
    const tell = progressLine(
      (text) => written.push(text),
      () => clock.shift() ?? 0,
      'Reckoning',
    );
    return { tell, lines: () => written.map((text) => text.replace('\r\u001b[K', '')) };
  };

  it('is told with the time left, after a second, and not more often than it can be read', () => {
    const { tell, lines } = watched([500, 1200, 1300, 4000]);
    for (const share of [0.05, 0.1, 0.11, 0.5]) tell(share);
    expect(lines()).toEqual(['Reckoning: 10 %, about 11 s left', 'Reckoning: 50 %, about 4 s left']);
  });

  it('leaves no trace when done, and says nothing of what is soon done', () => {
    const long = watched([2000]);
    long.tell(0.5);
    long.tell(1);
    expect(long.lines().at(-1)).toBe('');
    const short = watched([900]);
    short.tell(0.5);
    short.tell(1);
    expect(short.lines()).toEqual([]);
  });
});
