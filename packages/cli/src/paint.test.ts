/** Goal: lines keep their width and their words, whatever the text. Method: properties on random texts, and hand cases. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearTo } from './near.ts';
import { columns, columnsOf, columnsWithin, paint, reflow, wrap } from './paint.ts';

const word = fc.stringMatching(/^[a-zäöü]{1,12}$/);
const text = fc.array(word, { minLength: 1, maxLength: 60 }).map((words) => words.join(' '));
const width = fc.integer({ min: 20, max: 100 });
const indent = fc.integer({ min: 0, max: 6 }).map((count) => ' '.repeat(count));

describe('wrapping', () => {
  it('keeps every word, in order, and no line wider than asked for', () => {
    fc.assert(
      fc.property(text, width, indent, (given, most, before) => {
        const lines = wrap(given, most, before).split('\n');
        expect(lines.map((line) => line.slice(before.length)).join(' ')).toBe(given);
        for (const line of lines) {
          expect(line.startsWith(before)).toBe(true);
          expect(columnsOf(line)).toBeLessThanOrEqual(most);
        }
      }),
    );
  });

  it('breaks only where the next word would not have fitted', () => {
    fc.assert(
      fc.property(text, width, (given, most) => {
        const lines = wrap(given, most).split('\n');
        lines.slice(1).forEach((line, i) => {
          const [first = ''] = line.split(' ');
          expect(columnsOf(lines[i] ?? '') + 1 + first.length).toBeGreaterThan(most);
        });
      }),
    );
  });

  it('lets a word that is wider than the line stand alone', () => {
    expect(wrap('a verylongword b', 6)).toBe('a\nverylongword\nb');
  });

  it('keeps a number with its unit, in brackets as well, and not with any other word', () => {
    expect(wrap('about 12 mm wide', 9)).toBe('about\n12 mm\nwide');
    expect(wrap('loses (9 %) of it', 8)).toBe('loses\n(9 %) of\nit');
    expect(wrap('takes 3 turns', 8)).toBe('takes 3\nturns');
  });

  it('does not count colour codes as columns', () => {
    const io = { colour: true };
    const painted = `${paint(io, 'bad', 'one')} two ${paint(io, 'strong', 'three')}`;
    expect(wrap(painted, 7).split('\n').map(columnsOf)).toEqual([7, 5]);
    expect(columnsOf(paint(io, 'good', '✓ äö'))).toBe(4);
  });

  it('puts a head before the first line and an indent before the others', () => {
    expect(wrap('a b c d', 6, '    ', '- ')).toBe('- a b\n    c\n    d');
  });
});

describe('painting', () => {
  it('does nothing without colour, and with it paints every line for itself', () => {
    expect(paint({ colour: false }, 'bad', 'a\nb')).toBe('a\nb');
    const lines = paint({ colour: true }, 'bad', 'a\n\nb').split('\n');
    expect(lines[1]).toBe('');
    for (const line of [lines[0], lines[2]]) expect(line).toMatch(/31m[ab].*39m$/);
  });
});

describe('reflowing', () => {
  it('joins the lines of a paragraph and leaves lists, tables and examples their lines', () => {
    const help = 'One sentence that\ngoes on.\n\n  a  first\n  b  second\n\nExample:  do this\n          do that';
    expect(reflow(help, 60)).toBe(
      'One sentence that goes on.\n\n  a  first\n  b  second\n\nExample:  do this\n          do that',
    );
  });

  it('breaks what is too wide behind its own indent', () => {
    expect(reflow('  key  a b c d e f g', 12)).toBe('  key a b c\n    d e f g');
  });
});

describe('tables', () => {
  it('begin each column at the same place on every line', () => {
    expect(
      columns([
        ['a', 'bb', 'c'],
        ['aaa', 'b', 'c'],
      ]),
    ).toBe('a    bb  c\naaa  b   c');
  });

  it('let only the last column flow', () => {
    const table = columnsWithin(
      [
        ['a', 'one two three'],
        ['bb', 'four'],
      ],
      12,
    );
    expect(table).toBe('a   one two\n    three\nbb  four');
  });
});

describe('what was nearly meant', () => {
  const known = ['reckon', 'explain', 'limits', 'brown-out-stall', 'brown-out-board', 'pack.runTime'];
  it.each([
    ['limitz', ['limits']],
    ['rekon', ['reckon']],
    ['packruntime', ['pack.runTime']],
    ['brown', ['brown-out-stall', 'brown-out-board']],
    ['Pack.RunTime', ['pack.runTime']],
    ['zzz', []],
  ])('by %s is %j', (asked, near) => {
    expect(nearTo(asked, known)).toEqual(near);
  });

  it('is found through any one slip of the finger', () => {
    const slip = fc.tuple(fc.constantFrom('reckon', 'explain', 'limits'), fc.nat(5), fc.constantFrom('', 'x'));
    fc.assert(
      fc.property(slip, ([name, at, put]) => {
        expect(nearTo(name.slice(0, at) + put + name.slice(at + 1), known)).toContain(name);
      }),
    );
  });

  it('is a short list, the nearest first', () => {
    const many = Array.from({ length: 40 }, (_, i) => `part-${i}`);
    expect(nearTo('part', many)).toHaveLength(12);
    expect(nearTo('part-7', many)[0]).toBe('part-7');
  });
});
