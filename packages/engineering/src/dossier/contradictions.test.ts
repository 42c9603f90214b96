/**
 * Goal: what cannot all be true is refused, where one of the statements stands; what merely looks odd is not.
 * Method: the plain dossier with a few statements changed, just beyond a limit and just within it.
 */
import { describe, expect, it } from 'vitest';
import { wordFault } from './faults.ts';
import { readDossier } from './read.ts';
import { builtInShelf } from './shelf/built-in.ts';
import { changed, PLAIN_TEXT } from './testing.ts';

type Change = readonly [from: string, to: string];

function faultsAfter(...changes: readonly Change[]) {
  const text = changes.reduce((before, [from, to]) => changed(before, from, to), PLAIN_TEXT);
  const reading = readDossier(text, builtInShelf());
  return reading.ok ? [] : reading.faults;
}

const REAR: Change = ['"wheels": 2,\n        "driven": true', '"wheels": 1,\n        "driven": true'];
const SKID: readonly Change[] = [
  ['"driven": false, "steered": true', '"driven": true'],
  ['"kind": "on-off", "clutch": true, "angle": "20 ° ± 2 °"', '"kind": "skid"'],
];
const BY_SIDE: Change = ['"motorPer": "axle"', '"motorPer": "side"'];
const ONE_CHANNEL: Change = ['"channels": 2', '"channels": 1'];
const STALL: Change = [
  '"stallCurrent": { "value": "3.1 A ± 10 %", "basis": "label", "remark": "printed on the can" },',
  '',
];

/** Claim, changes that break it, pointer of the fault, words of it; then changes that just keep it. */
const ROWS: readonly (readonly [string, readonly Change[], string, string, readonly Change[]])[] = [
  [
    'something drives it',
    [['"driven": true', '"driven": false']],
    '/donor/axles',
    'no driven axle',
    [['"driven": false', '"driven": true']],
  ],
  [
    'axles stand front to rear',
    [['"position": "230 mm ± 2 mm"', '"position": "0 mm"']],
    '/donor/axles/1/position',
    'front to rear',
    [['"position": "230 mm ± 2 mm"', '"position": "250 mm"']],
  ],
  [
    'the front axle stands at nought',
    [['"driven": false, "steered"', '"driven": false, "position": "5 mm", "steered"']],
    '/donor/axles/0/position',
    'counted from this axle',
    [['"driven": false, "steered"', '"driven": false, "position": "0 mm", "steered"']],
  ],
  [
    'wheels of two axles do not stand in each other',
    [['"position": "230 mm ± 2 mm"', '"position": "47 mm"']],
    '/donor/axles/1/position',
    'half a wheel diameter (95 mm ± 1 mm)',
    [
      ['"position": "230 mm ± 2 mm"', '"position": "48 mm"'],
      ['"load": "0.88 kg ± 5 g"', '"load": "0.7 kg"'],
    ],
  ],
  [
    'spring travel has a spring',
    [['"springRate": "900 N/m ± 10 %"', '"springTravel": "20 mm"']],
    '/donor/axles/1/springRate',
    'spring travel',
    [['"springRate": "900 N/m ± 10 %"', '"springRate": "900 N/m", "springTravel": "20 mm"']],
  ],
  [
    'a wheel is no higher than the toy by a fifth',
    [['"95 mm ± 1 mm"', '"217 mm"']],
    '/donor/body/wheelDiameter',
    'the height of the toy, 180 mm ± 2 mm',
    [['"95 mm ± 1 mm"', '"215 mm"']],
  ],
  [
    'a wheel is no larger than any wheel',
    [['"95 mm ± 1 mm"', '"1 km"']],
    '/donor/body/wheelDiameter',
    'up to 600 mm',
    [['"95 mm ± 1 mm"', '"9 cm"']],
  ],
  [
    'the track is no wider than the toy by a fifth',
    [['"track": "180 mm ± 2 mm", "load": "0.74', '"track": "265 mm", "load": "0.74']],
    '/donor/axles/0/track',
    'the width of the toy, 220 mm ± 2 mm',
    [['"track": "180 mm ± 2 mm", "load": "0.74', '"track": "263 mm", "load": "0.74']],
  ],
  [
    'the wheelbase is no longer than the toy',
    [
      ['"position": "230 mm ± 2 mm"', '"position": "381 mm"'],
      ['"frontOverhang": "60 mm ± 2 mm",', ''],
    ],
    '/donor/axles/1/position',
    'the length of the toy, 380 mm ± 2 mm',
    [
      ['"position": "230 mm ± 2 mm"', '"position": "379 mm"'],
      ['"frontOverhang": "60 mm ± 2 mm",', ''],
    ],
  ],
  [
    'overhangs and wheelbase make the length',
    [['"70 mm ± 2 mm"', '"170 mm"']],
    '/donor/body/length',
    '460 mm from the foremost to the rearmost',
    [['"70 mm ± 2 mm"', '"165 mm"']],
  ],
  [
    'the mass centre is no higher than the roof',
    [['"height": "180 mm ± 2 mm"', '"height": "180 mm", "centreHeight": "181 mm"']],
    '/donor/body/centreHeight',
    'the height of the toy',
    [['"height": "180 mm ± 2 mm"', '"height": "180 mm", "centreHeight": "179 mm"']],
  ],
  [
    'the mass centre is not behind the rear axle',
    [['"length": "380 mm', '"centreBehind": "231 mm", "length": "380 mm']],
    '/donor/body/centreBehind',
    'behind the rear axle',
    [['"length": "380 mm', '"centreBehind": "125 mm", "length": "380 mm']],
  ],
  [
    'the mass centre is where the axle loads put it',
    // By hand: 230 mm · 0.88 / 1.62 = 125 mm, give or take a quarter of 230 mm.
    [['"length": "380 mm', '"centreBehind": "60 mm", "length": "380 mm']],
    '/donor/body/centreBehind',
    'about 125 mm',
    [['"length": "380 mm', '"centreBehind": "70 mm", "length": "380 mm']],
  ],
  [
    'axle loads make up the mass',
    [['"load": "0.88 kg ± 5 g"', '"load": "1.4 kg"']],
    '/donor/axles',
    'add up to 2.14 kg',
    [['"load": "0.88 kg ± 5 g"', '"load": "1.3 kg"']],
  ],
  [
    'less is taken out than is there',
    [['"210 g ± 10 g"', '"1620 g"']],
    '/donor/body/removed',
    'less than 1.62 kg',
    [['"210 g ± 10 g"', '"1.6 kg"']],
  ],
  [
    'a steered vehicle has a steered axle',
    [['"steered": true, ', '']],
    '/donor/steering/kind',
    'without a steered axle',
    [],
  ],
  [
    'a servo steers where a servo is said to',
    [['"kind": "on-off", "clutch": true', '"kind": "servo"']],
    '/conversion/parts/servo',
    'servo',
    [],
  ],
  [
    'a skid-steered vehicle has no steered axle',
    [...SKID.slice(1), BY_SIDE],
    '/donor/steering/kind',
    'with a steered axle',
    [...SKID, BY_SIDE],
  ],
  [
    'a skid-steered vehicle has a motor for each side',
    SKID,
    '/donor/drive/motorPer',
    'a motor per axle',
    [...SKID, ['"motorPer": "axle"', '"motorPer": "wheel"']],
  ],
  [
    'a skid-steered vehicle has a bridge channel for each side',
    [...SKID, BY_SIDE, ONE_CHANNEL],
    '/conversion/parts/bridge',
    'two channels',
    [...SKID, BY_SIDE, ONE_CHANNEL, ['"settings"', '"bridges": 2, "settings"']],
  ],
  [
    'an on/off steering motor has a bridge channel of its own',
    [ONE_CHANNEL],
    '/conversion/parts/bridge',
    'one for the steering motor',
    [ONE_CHANNEL, ['"settings"', '"bridges": 2, "settings"']],
  ],
  ['sides are driven apart only where there are two', [REAR, BY_SIDE], '/donor/axles/1/wheels', 'driven apart', [REAR]],
  [
    'a stall current has its voltage',
    [['"stallVoltage": "3 V ± 2 %",', '']],
    '/donor/drive/motor/stallVoltage',
    'half voltage',
    [['"stallVoltage": "3 V ± 2 %",', ''], STALL],
  ],
  ['a stall voltage has its current', [STALL], '/donor/drive/motor/stallCurrent', 'leave its voltage', []],
  [
    'a no-load voltage has its speed',
    [['"noLoadSpeed": "14000 rpm ± 3 %",', '']],
    '/donor/drive/motor/noLoadSpeed',
    'at that voltage',
    [['"noLoadSpeed": "14000 rpm ± 3 %",\n        "noLoadVoltage": "7.2 V ± 2 %"', '"averageShare": "20 %"']],
  ],
  [
    'a free motor draws less than a held one',
    [['"0.3 A ± 10 %"', '"3.1 A"']],
    '/donor/drive/motor/noLoadCurrent',
    'less than 3.1 A',
    [['"0.3 A ± 10 %"', '"3 A"']],
  ],
  [
    'the coldest is not above the hottest',
    [['"coldest": "2 °C"', '"coldest": "31 °C"']],
    '/service/day/coldest',
    'no more than 30 °C',
    [['"coldest": "2 °C"', '"coldest": "8 °C"']],
  ],
  [
    'no usual day is colder than the coldest',
    [['"coldest": "2 °C"', '"coldest": "9 °C"']],
    '/service/day/usual',
    'below the coldest, 9 °C',
    [['"coldest": "2 °C"', '"coldest": "8 °C"']],
  ],
  [
    'no usual day is hotter than the hottest',
    [['"hottest": "30 °C"', '"hottest": "21.9 °C"']],
    '/service/day/usual',
    'above the hottest, 21.9 °C',
    [['"hottest": "30 °C"', '"hottest": "22 °C"']],
  ],
  [
    'the worst ground rolls no better than the usual',
    [['"surfaces"', '"ground": { "rolling": "5 %", "rollingWorst": "4 %" }, "surfaces"']],
    '/service/ground/rollingWorst',
    'at least 5 %',
    [['"surfaces"', '"ground": { "rolling": "5 %", "rollingWorst": "0.05" }, "surfaces"']],
  ],
  [
    'the most slippery ground holds no better than the usual',
    [['"surfaces"', '"ground": { "adhesion": "0.5", "adhesionWorst": "60 %" }, "surfaces"']],
    '/service/ground/adhesionWorst',
    'no more than 0.5',
    [['"surfaces"', '"ground": { "adhesion": "0.5", "adhesionWorst": "50 %" }, "surfaces"']],
  ],
  [
    'the shares of the way make a whole',
    [['"share": 0.3', '"share": 0.28']],
    '/service/surfaces',
    'add up to 0.98',
    [['"share": 0.3', '"share": 0.29']],
  ],
  [
    'a bridge bears for a moment what it bears for long',
    [['"currentPeak": "20 A ± 10 %"', '"currentPeak": "7 A"']],
    '/conversion/parts/bridge/currentContinuous',
    'the peak current, 7 A',
    [['"currentPeak": "20 A ± 10 %"', '"currentPeak": "8 A"']],
  ],
  [
    'a bridge runs somewhere between its lowest and highest voltage',
    [['"voltageMin": "5 V"', '"voltageMin": "25 V"']],
    '/conversion/parts/bridge/voltageMin',
    'the highest supply voltage, 24 V',
    [['"voltageMin": "5 V"', '"voltageMin": "24 V"']],
  ],
];

describe('in a dossier', () => {
  it.each(ROWS)('%s', (_, broken, at, says, kept) => {
    const faults = faultsAfter(...broken);
    const sentences = faults.map(wordFault);
    const found = faults.filter((f) => f.at === at).map(wordFault);
    expect(found.length, sentences.join('\n')).toBeGreaterThan(0);
    expect(found.join('\n')).toContain(says);
    expect(faultsAfter(...kept).map(wordFault)).toEqual([]);
  });

  it('one wheel is too few, four axles with eight are not too many, and five axles are', () => {
    const axle = (wheels: number, at: number) =>
      `{ "wheels": ${wheels}, "driven": true, "position": "${at} mm", "track": "100 mm" }`;
    const withAxles = (...axles: string[]) =>
      PLAIN_TEXT.replace(/"axles": \[[\s\S]*?\n {4}\],/, `"axles": [${axles.join(', ')}],`)
        .replace(/"steering": \{.*?\}/, '"steering": { "kind": "skid" }')
        .replace('"motorPer": "axle"', '"motorPer": "wheel"');
    const says = (text: string) => {
      const reading = readDossier(text, builtInShelf());
      return reading.ok ? '' : reading.faults.map(wordFault).join('\n');
    };
    expect(says(withAxles(axle(1, 0)))).toContain('found one wheel. Accepted: 2 to 8 wheels.');
    expect(says(withAxles(axle(2, 0)))).toBe('');
    expect(says(withAxles(axle(2, 0), axle(2, 80), axle(2, 160), axle(2, 240)))).toBe('');
    expect(says(withAxles(axle(2, 0), axle(2, 80), axle(2, 160), axle(2, 240), axle(2, 320)))).toContain(
      'at most 4 values',
    );
  });

  it('a mast of four metres is refused by the limits of places', () => {
    const [first] = faultsAfter(['"240 mm ± 5 mm"', '"4 m"']);
    expect(first).toMatchObject({ code: 'QUANTITY_LIMITS', at: '/conversion/places/camera/height' });
  });

  it('a picture wider than the camera, a pack nobody can charge and a small fuse are no contradictions', () => {
    expect(faultsAfter(['"640 px"', '"4000 px"'], ['"lipo-2s-2200"', '"alkaline-4s-2500"']).map(wordFault)).toEqual([]);
  });
});
