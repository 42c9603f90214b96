/** Runs the dependency cruiser over a tree with the house's arrows and gives what it saw as data. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

const HOUSE = join(import.meta.dirname, '..');

/** An import that breaks a rule; for a cycle, `to` walks it. */
export interface Violation {
  readonly rule: string;
  readonly from: string;
  readonly to: string;
  readonly why: string;
}

/** What one cruise saw. */
export interface Cruise {
  /** Every module of the tree itself that was read, by path from its root. */
  readonly modules: readonly string[];
  readonly violations: readonly Violation[];
}

/** The part of the cruiser's JSON report that is used here. */
interface Report {
  readonly modules: readonly { readonly source: string; readonly followable?: boolean }[];
  readonly summary: {
    readonly violations: readonly {
      readonly from: string;
      readonly to: string;
      readonly rule: { readonly name: string };
      readonly comment?: string;
      readonly cycle?: readonly { readonly name: string }[];
    }[];
    readonly ruleSetUsed: { readonly forbidden: readonly { readonly name: string; readonly comment: string }[] };
  };
}

/**
 * @param root  a tree with `packages/`, and perhaps `tests/`, `scripts/` and `benchmarks/`
 * @throws      when the cruiser gives no report
 */
export function cruise(root: string): Cruise {
  const folders = ['packages', 'tests', 'scripts', 'benchmarks'].filter((folder) => existsSync(join(root, folder)));
  const program = join(HOUSE, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const config = join(HOUSE, '.dependency-cruiser.cjs');
  const run = spawnSync(process.execPath, [program, '--config', config, '--output-type', 'json', ...folders], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  if (!run.stdout.startsWith('{'))
    throw new Error(`The dependency cruiser gave no report: ${run.stderr || run.stdout}`);
  const { modules, summary } = JSON.parse(run.stdout) as Report;
  const why = new Map(summary.ruleSetUsed.forbidden.map((rule) => [rule.name, rule.comment]));
  return {
    modules: modules
      .map((m) => m.source)
      .filter((source) => existsSync(join(root, source)) && !source.includes('node_modules/')),
    violations: summary.violations.map((v) => ({
      rule: v.rule.name,
      from: v.from,
      to: v.cycle ? v.cycle.map((step) => step.name).join(' → ') : v.to,
      why: why.get(v.rule.name) ?? '',
    })),
  };
}
