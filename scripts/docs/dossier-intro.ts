/** The hand-written part of the page on the dossier. */

export const DOSSIER_INTRO = `A **dossier** is one vehicle in one JSON file: made to be read, kept under version control and mailed to a friend. What was
measured goes in with its doubt; what was not is assumed with a wide one, and the assumption is listed with every result.
\`longrein new my-toy.json\` asks for the few measurements that matter and writes the file; \`longrein validate my-toy.json\`
checks one and lists what is assumed. [examples/reedmere](../examples/README.md) holds four complete ones.
[dossier.schema.json](dossier.schema.json) is the JSON Schema (2020-12) of the file and [shelf.schema.json](shelf.schema.json) that of
a file of parts, for editors that complete keys; the program checks more than a schema can say.`;

export const QUANTITY_INTRO = `A quantity is written as a person would write it: a number and a unit, and how well it is known.

| Written | Means |
| --- | --- |
| \`1.62 kg\` | exactly that: a setting, a count, something declared |
| \`1.62 kg ± 5 g\` | a **doubt** in a unit of the same kind: the standard doubt (k = 1), two thirds of all such readings lie within it |
| \`0.9 Ω ± 15 %\` | a doubt in per cent of the value |
| \`7.4 ± 0.1 V\` | the unit once, for both |
| \`20 … 30 °C\` | a **range**: every value in it is as likely as any other |
| \`800 mA … 1.2 A\` | a range with a unit at each end |
| \`27.6 ± 0.5 %\` | a plain number, such as a gear ratio, with its doubt in per cent |

\`...\` stands for \`…\`, \`+-\` and \`+/-\` for \`±\`, \`ohm\` for \`Ω\`, \`u\` for \`µ\`, \`deg\` for \`°\`, \`degC\` for \`°C\`. Any unit of the right kind
is accepted: where the table says mm, \`0.38 m\` will do. A decimal comma, a missing unit, a unit of another kind and a
prefix nobody uses (\`mHz\`) are refused with what to write instead. A quantity that must be above zero and whose doubt is
more than 30 % of it is drawn from a log-normal distribution, any other doubt from a normal one; what would lie outside
the limits of the table is never drawn.

Where a word on the source helps, write an object instead of the text:

\`\`\`json
{ "value": "0.9 Ω ± 15 %", "basis": "estimate", "remark": "from the stall current on the label" }
\`\`\`

The **basis** is \`measured\`, \`label\` (printed on the thing or in its sheet) or \`estimate\`; left out, parts of the shelf and the
figures of the original pack count as \`label\`, everything else as \`measured\`. A basis changes no number: how good a label is
belongs into its doubt. The **remark** is shown by \`longrein explain\` wherever the quantity is used.`;

export const BEHAVIOUR_INTRO = `The column _Is_ tells how a quantity behaves over the possible vehicles:

- **doubt**: one truth, not exactly known, such as a resistance. Measuring it narrows it.
- **variation**: differs from day to day and from driver to driver, such as the reaction time. Every possible vehicle is
  drawn with a day and a driver of its own; no measurement takes the spread away.
- **worst**: the declared worst of something that varies, such as the steepest slope. Findings are held to it.
- **setting**: chosen by the maker, such as a duty ceiling. It is what it is.

Keys in bold must be there. _If absent_ is what is assumed where nobody states the quantity, and why; a dash means that
nothing is assumed: what needs it takes another route, or stays unsettled and says so.`;

export const SURFACES_INTRO = 'Names of surfaces, with the rolling resistance and adhesion that are assumed there:';

export const PARTS_INTRO = `A part in place is an object with its \`kind\`; a file of parts for \`--shelf\` is
\`{ "format": 1, "parts": [ … ] }\`, and every part in it has an \`id\`. A part of yours takes the place of a built-in one of the
same id. These keys any part has:`;
