/** Says what to measure next. */
import { measureNext } from '@longrein/engineering';
import { type Command, EXIT, theFile } from '../command.ts';
import { loadReckoning, RECKON_OPTIONS } from '../load.ts';
import { paint, wrap } from '../paint.ts';

const about = { name: 'measure-next', usage: 'FILE [--cases N] [--seed N] [--shelf FOLDER] [--json]' };
/** Lines printed; what comes after settles next to nothing. */
const SHOWN = 10;

export const measureNextCommand: Command = {
  ...about,
  summary: 'rank what to measure by how much it would settle',
  help: `
A verdict is open while a finding holds in some possible vehicles and not in others. Each input explains a share of
that; the one that explains most is worth measuring first. What no better than an idle input would seem to settle is
not listed: that noise floor is printed.

Example:  longrein measure-next examples/reedmere/burdock.json`,
  options: RECKON_OPTIONS,
  run: (io, args) => {
    const reckoning = loadReckoning(io, theFile(about, args), args);
    const next = measureNext(reckoning);
    if (args.values.json) {
      io.out(
        JSON.stringify(
          {
            name: reckoning.vehicle.name,
            open: next.open,
            floor: next.floor,
            ranked: next.ranked.map(({ input, settles, findings }) => ({
              id: input.id,
              title: input.facts.title,
              now: input.quantity.text,
              origin: input.origin,
              settles,
              how: input.facts.how,
              findings,
            })),
          },
          null,
          2,
        ),
      );
      return EXIT.fine;
    }
    io.out(paint(io, 'strong', reckoning.vehicle.name));
    if (next.ranked.length === 0) {
      io.out(
        next.open === 0
          ? 'Every verdict is plain: in all possible vehicles the same. Nothing to measure would change one.'
          : 'No single measurement stands out from chance; several small doubts share what is open. More --cases see finer.',
      );
      return EXIT.fine;
    }
    next.ranked.slice(0, SHOWN).forEach(({ input, settles, findings }, i) => {
      io.out(
        `\n${i + 1}. ${paint(io, 'strong', input.facts.title)}: would settle ${Math.round(settles * 100)} % of what is open`,
      );
      const say = (text: string) => io.out(wrap(text, io.width, '   '));
      say(`Now ${input.quantity.text} (${input.origin}${input.remark ? `: ${input.remark}` : ''})`);
      say(`How: ${input.facts.how}`);
      say(
        `Bears on: ${findings
          .slice(0, 4)
          .map((f) => `${f.title} (${Math.round(f.share * 100)} %)`)
          .join('; ')}`,
      );
    });
    io.out(
      paint(
        io,
        'faint',
        `\nNoise floor: an idle input would seem to settle ${(next.floor * 100).toFixed(1)} %; only what is above it is listed.`,
      ),
    );
    return EXIT.fine;
  },
};
