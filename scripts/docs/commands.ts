/** Every command of the command line with its usage and its help, as the program prints them. */
import { COMMANDS } from '../../packages/cli/src/run.ts';
import type { Page } from '../tree.ts';
import { code, GENERATED, page, slug, table } from './markdown.ts';

export function commands(): Page[] {
  const text = page(
    '# Commands',
    GENERATED,
    `After \`npm ci\` and \`npm run build\`, \`npx longrein\` is the command; \`npm run longrein --\` runs it from the sources.
\`longrein help COMMAND\` prints what stands here. Every command prints words and marks first and colour second, and no
colour where \`NO_COLOR\` is set or the output is not a terminal. The shapes behind \`--json\` stand in [shapes](shapes.md).`,
    table(
      ['Command', 'What it is for'],
      COMMANDS.map(({ name, summary }) => [`[${name}](#${slug(`longrein ${name}`)})`, summary]),
    ),
    `Exit codes: 0, all findings hold or are tight, or the command did what it was asked; 1, something fails or is unsettled;
2, bad input, and nothing was done.`,
    ...COMMANDS.flatMap(({ name, usage, help }) => [
      `## longrein ${name}`,
      code(`longrein ${name} ${usage}`),
      ['```text', help.trim(), '```'],
    ]),
  );
  return [{ path: 'docs/commands.md', text }];
}
