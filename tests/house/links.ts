/** Links of a Markdown page, and the anchors it offers. */

/** A link to another place of the house, with the line it stands on. */
export interface Link {
  readonly line: number;
  readonly target: string;
}

/** The page without its code, line by line, so that line numbers stay. */
function prose(text: string): string[] {
  let fenced = false;
  return text.split('\n').map((line) => {
    const fence = /^\s*(?:```|~~~)/.test(line);
    if (fence) fenced = !fenced;
    return fence || fenced ? '' : line.replace(/`[^`]*`/g, (code) => ' '.repeat(code.length));
  });
}

/** Every link that does not leave the house. */
export function localLinks(text: string): Link[] {
  return prose(text).flatMap((line, i) =>
    [...line.matchAll(/\]\(\s*<?([^)\s>]+)>?[^)]*\)|^\[[^\]]+\]:\s*(\S+)/g)]
      .map((found) => found[1] ?? found[2] ?? '')
      .filter((target) => !/^[a-z][a-z\d+.-]*:/i.test(target))
      .map((target) => ({ line: i + 1, target: decodeURI(target) })),
  );
}

/** The anchors that headings make: lower case, spaces to hyphens, marks dropped, repeats numbered. */
export function anchors(text: string): string[] {
  const seen = new Map<string, number>();
  let fenced = false;
  return text.split('\n').flatMap((line) => {
    if (/^\s*(?:```|~~~)/.test(line)) fenced = !fenced;
    const heading = fenced ? undefined : /^#{1,6}\s+(.*?)\s*#*$/.exec(line)?.[1];
    if (heading === undefined) return [];
    const plain = heading.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1').toLowerCase();
    const slug = plain.replace(/[^\p{L}\p{N}\p{M}_\s-]/gu, '').replace(/\s/g, '-');
    const times = seen.get(slug) ?? 0;
    seen.set(slug, times + 1);
    return [times === 0 ? slug : `${slug}-${times}`];
  });
}
