/**
 * Goal: what the command writes is whole, useful and never in place of something of the user's.
 * Method: the questions of `new` answered well, badly and not to the end; keys and records made and read back.
 */
import { builtInShelf, readDossier } from '@longrein/engineering';
import { decodeLimits, makeKeyPair } from '@longrein/wire';
import { describe, expect, it } from 'vitest';
import { example, longrein } from './fake-io.ts';

const QUICK = ['--cases', '20'];

/** Answers that a maker of a plain toy would give; the rest of the questions are left at what stands in brackets. */
const SIZES = ['1.62 kg ± 5 g', '380 mm ± 3 mm', '210 mm', '170 mm', '85 mm ± 1 mm', '240 mm', '165 mm'];
/** Steering, clutch, driven axles, motors, resistance; chemistry and cells; capacity, run time, speed; the rest. */
const PLAIN = [
  'Nettle',
  ...SIZES,
  '',
  '',
  '',
  '',
  '1.3 Ω ± 10 %',
  '',
  '6',
  '700 mAh',
  '20 min ± 3 min',
  '',
  '',
  '',
  '',
  '',
];

describe('new', () => {
  it('walks through the questions and writes a dossier that reads, and that reckons', async () => {
    const { exit, out, written } = await longrein(['new', 'nettle.json'], { answers: PLAIN });
    expect(exit).toBe(0);
    expect([...written.keys()]).toEqual(['nettle.json']);
    expect(out).toContain('Written to nettle.json. Next: longrein reckon nettle.json');
    const text = written.get('nettle.json')?.text ?? '';
    expect(text.endsWith('}\n')).toBe(true);
    const reading = readDossier(text, builtInShelf());
    expect(reading.ok && reading.value.name).toBe('Nettle');
    expect(JSON.parse(text).donor).toMatchObject({
      body: { mass: '1.62 kg ± 5 g', runTime: '20 min ± 3 min' },
      drive: { motorPer: 'vehicle', motor: { resistance: '1.3 Ω ± 10 %' } },
      steering: { kind: 'on-off', clutch: false },
      pack: { chemistry: 'nimh', cells: 6, capacity: '700 mAh' },
    });
    const reckoned = await longrein(['reckon', 'nettle.json', ...QUICK], { files: { 'nettle.json': text } });
    expect([0, 1]).toContain(reckoned.exit);
    expect(reckoned.out).toContain('0 unsettled');
  });

  it('asks again after an answer that will not do, and says what would', async () => {
    const [name, mass, ...rest] = PLAIN as [string, string, ...string[]];
    const answers = [name, '1,62 kg', '1.62 m', 'heavy', '', mass, ...rest];
    const { exit, out, written } = await longrein(['new', 'nettle.json'], { answers });
    expect(exit).toBe(0);
    expect(out).toContain('Write a decimal point');
    expect(out).toContain('An answer is needed here.');
    expect(JSON.parse(written.get('nettle.json')?.text ?? '{}').donor.body.mass).toBe(mass);
    expect(out.match(/How heavy is it/g)).toHaveLength(1);
  });

  it.each([
    ['servo', ['servo', '', ''], { kind: 'servo' }],
    ['skid', ['skid'], { kind: 'skid' }],
    ['on-off with a clutch', ['on-off', 'yes', 'all', 'axle'], { kind: 'on-off', clutch: true }],
  ])('asks only what the steering makes sense of, and the dossier reckons: %s', async (_kind, steering, written) => {
    const answers = ['Nettle', ...SIZES, ...steering, '1.3 Ω', '', '6', '', '', '', '', '', '', ''];
    const made = await longrein(['new', 'n.json'], { answers });
    expect(made.err).toBe('');
    const text = made.written.get('n.json')?.text ?? '';
    expect(JSON.parse(text).donor.steering).toEqual(written);
    expect((await longrein(['reckon', 'n.json', ...QUICK], { files: { 'n.json': text } })).err).toBe('');
  });

  it('refuses a choice there is not, and lists those there are', async () => {
    const answers = ['Nettle', ...SIZES, 'rudder', 'servo', ...PLAIN.slice(10)];
    const { out } = await longrein(['new', 'n.json'], { answers });
    expect(out).toContain('Accepted: on-off, servo, skid.');
  });

  it.each([0, 1, 5, PLAIN.length - 2])('writes nothing where the input ends after %i answers', async (count) => {
    const { exit, err, written } = await longrein(['new', 'n.json'], { answers: PLAIN.slice(0, count) });
    expect(exit).toBe(2);
    expect(err).toContain('nothing was written');
    expect(written.size).toBe(0);
  });

  it('gives the pack that was chosen a charger that fits it', async () => {
    const pack = async (id: string) => {
      const made = await longrein(['new', 'n.json'], { answers: [...PLAIN.slice(0, -1), id] });
      const text = made.written.get('n.json')?.text ?? '';
      const { out } = await longrein(['reckon', 'n.json', '--subject', 'pack and charging', ...QUICK], {
        files: { 'n.json': text },
      });
      return out;
    };
    for (const id of ['lipo-1s-750', 'lipo-4s-3300', 'lfp-2s-1500', 'nimh-8s-2000', 'lead-6s-1300']) {
      expect(await pack(id), id).toMatch(/✓ holds 100 of 100 +The charger suits/);
    }
    expect(await pack('alkaline-4s-2500')).toMatch(/✗ fails 0 of 100 +The charger suits/);
  });

  it('warns of lithium packs before anything is opened, and of a drive of which nothing was said', async () => {
    const blind = PLAIN.map((answer) => (['1.3 Ω ± 10 %', '20 min ± 3 min'].includes(answer) ? '' : answer));
    const { out } = await longrein(['new', 'n.json'], { answers: blind });
    expect(out.indexOf('Lithium packs can burn')).toBe(0);
    expect(out.replaceAll('\n', ' ')).toContain('nothing about its drive can be settled');
    expect((await longrein(['new', 'n.json'], { answers: PLAIN })).out).not.toContain('can be settled');
  });
});

describe('limits', () => {
  const KEY = '07'.repeat(32);
  const { publicKey } = makeKeyPair(new Uint8Array(32).fill(7));

  it('makes a key that nobody else may read, once, and tells the public one', async () => {
    const { exit, out, written } = await longrein(['limits', '--new-key', 'owner.key']);
    expect(exit).toBe(0);
    const { text, mode } = written.get('owner.key') ?? { text: '', mode: 0 };
    expect(mode).toBe(0o600);
    expect(text).toMatch(/^[0-9a-f]{64}\n$/);
    expect(out).toContain(makeKeyPair(Uint8Array.from(Buffer.from(text.trim(), 'hex'))).publicKey);
    expect(out).not.toContain(text.trim());
    const again = await longrein(['limits', '--new-key', 'owner.key'], { files: { 'owner.key': text } });
    expect(again).toMatchObject({ exit: 2, err: expect.stringContaining('never overwritten') });
    const other = await longrein(['limits', '--new-key', 'other.key']);
    expect(other.written.get('other.key')?.text).not.toBe(text);
  });

  it('writes the record exactly as the vehicle reads it, signed where a key was given', async () => {
    const files = { 'owner.key': `${KEY}\n` };
    const { exit, out, written } = await longrein(
      ['limits', 'sedge.json', '--key', 'owner.key', '--out', 'sedge.limits.json', ...QUICK],
      { files },
    );
    expect(exit).toBe(0);
    const text = written.get('sedge.limits.json')?.text ?? '';
    const decoded = decodeLimits(text, { publicKey });
    expect(decoded.ok && decoded.record.vehicle).toBe('Sedge');
    expect(decoded.ok && decoded.record.madeWith).toEqual({ cases: 20, seed: 1 });
    expect(out).toContain(', signed');
    expect(out).toContain('Written to sedge.limits.json.');
    expect(out).toMatch(/speedCap +[\d.]+ m\/s/);

    const unsigned = ['limits', 'sedge.json', '--out', 'sedge.limits.json', ...QUICK];
    const again = await longrein(unsigned, { files: { 'sedge.limits.json': text } });
    expect(again.exit).toBe(2);
    expect(again.err).toContain('sedge.limits.json is signed');
    expect(again.written.size).toBe(0);
  });

  it('prints the same bytes as JSON, and says so where it is not signed', async () => {
    const printed = await longrein(['limits', 'sedge.json', '--json', '--out', 'r.json', ...QUICK]);
    expect(printed.out).toBe(printed.written.get('r.json')?.text);
    expect(decodeLimits(printed.out).ok).toBe(true);
    expect((await longrein(['limits', 'sedge.json', ...QUICK])).out).toContain('not signed');
  });

  it('minds that a vehicle that fails should not be driven by strangers yet', async () => {
    const mind = 'should not be driven by strangers yet';
    expect((await longrein(['limits', 'teasel.json', ...QUICK])).out.replaceAll('\n', ' ')).toContain(mind);
    expect((await longrein(['limits', 'sedge.json', ...QUICK])).out.replaceAll('\n', ' ')).not.toContain(mind);
  });

  it('refuses a key that is none before it reckons, and writes no record', async () => {
    const files = { 'bad.key': 'secret\n' };
    const { exit, err, written } = await longrein(['limits', 'sedge.json', '--key', 'bad.key', '--out', 'r.json'], {
      files,
    });
    expect(exit).toBe(2);
    expect(err).toContain('64 hexadecimal digits');
    expect(err).not.toContain('secret\n');
    expect(written.size).toBe(0);
  });

  it('says which quantity is lacking where no record can be made', async () => {
    const dossier = JSON.parse(
      (await longrein(['new', 'n.json'], { answers: PLAIN })).written.get('n.json')?.text ?? '{}',
    );
    delete dossier.donor.drive.motor;
    delete dossier.donor.body.runTime;
    const { exit, err, written } = await longrein(['limits', 'n.json', '--out', 'r.json', ...QUICK], {
      files: { 'n.json': JSON.stringify(dossier) },
    });
    expect(exit).toBe(2);
    const told = err.replaceAll('\n', ' ');
    expect(told).toMatch(/^No record: .*(?:stallCurrent|dutyCeiling) \(.*\(motor\.resistance\)/);
    expect(written.size).toBe(0);
  });

  it('says so where the folder to write in is not there', async () => {
    const { exit, err } = await longrein(['limits', 'sedge.json', '--out', 'attic/r.json', ...QUICK]);
    expect(exit).toBe(2);
    expect(err).toContain('Cannot write attic/r.json: there is no such file or folder. Nothing was written.');
  });
});

describe('shelf', () => {
  const own = (part: object) => ({ files: { 'parts/mine.json': JSON.stringify({ format: 1, parts: [part] }) } });

  it('lists every kind under its name, one kind without a heading, one part with its figures', async () => {
    const all = (await longrein(['shelf'])).out;
    for (const kind of ['pack', 'converter', 'bridge', 'fuse', 'wire', 'charger'])
      expect(all).toMatch(new RegExp(`^${kind}$`, 'm'));
    expect(all.startsWith('\n')).toBe(false);
    const packs = (await longrein(['shelf', 'pack'])).out;
    expect(packs).not.toMatch(/^pack$/m);
    for (const line of packs.trimEnd().split('\n')) expect(line).toMatch(/^ {2}[a-z]+-\d\ds?-|^ {2}[a-z]+-\ds-/);
    const one = (await longrein(['shelf', 'lipo-2s-2200'])).out;
    expect(one).toMatch(/capacity +2200 mAh/);
  });

  it('takes parts of a folder of the user’s own beside the built-in ones', async () => {
    const [fuse] = JSON.parse((await longrein(['shelf', 'fuse', '--json'])).out);
    const listed = await longrein(
      ['shelf', 'fuse', '--shelf', 'parts'],
      own({ ...fuse, id: 'my-fuse', title: 'mine' }),
    );
    expect(listed.err).toBe('');
    expect(listed.out).toMatch(/my-fuse +mine/);
    expect(listed.out).toContain(fuse.id);
  });

  it('prints every built-in part as JSON that reads again as the same part', async () => {
    const all: { id: string }[] = JSON.parse((await longrein(['shelf', '--json'])).out);
    expect(all.length).toBe(builtInShelf().parts.length);
    const renamed = all.map((part) => ({ ...part, id: `my-${part.id}` }));
    const files = { 'parts/all.json': JSON.stringify({ format: 1, parts: renamed }) };
    const again = await longrein(['shelf', '--shelf', 'parts', '--json'], { files });
    expect(again.err).toBe('');
    const mine = JSON.parse(again.out).filter(({ id }: { id: string }) => id.startsWith('my-'));
    expect(mine).toEqual(renamed);
  });

  it('lets a dossier name a part of the user’s own', async () => {
    const [fuse] = JSON.parse((await longrein(['shelf', 'fuse-mini-5a', '--json'])).out);
    const dossier = example('sedge').replace('"fuse-mini-5a"', '"my-fuse"');
    const files = { ...own({ ...fuse, id: 'my-fuse' }).files, 'mine.json': dossier };
    expect((await longrein(['validate', 'mine.json'], { files })).err).toContain('my-fuse');
    expect((await longrein(['validate', 'mine.json', '--shelf', 'parts'], { files })).exit).toBe(0);
  });

  it('tells the faults of such a file with their place', async () => {
    const { exit, err } = await longrein(['shelf', '--shelf', 'parts'], own({ kind: 'fuse', id: 'x' }));
    expect(exit).toBe(2);
    expect(err).toContain('parts/mine.json');
    expect(err).toContain('/parts/0');
  });
});
