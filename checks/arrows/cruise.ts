import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { rules } from './rules.ts';

/** One import that breaks a rule. Paths are relative to the house. */
export interface Breach {
  readonly rule: string;
  readonly from: string;
  readonly to: string;
  readonly remedy: string;
}

/** What the cruiser saw: every breach, and for each file what its imports were written as and led to. */
export interface Cruise {
  readonly breaches: readonly Breach[];
  readonly imports: ReadonlyMap<string, ReadonlyMap<string, string>>;
}

/**
 * Follows every import under `packages/` of a house and judges it by the rules.
 *
 * @param house folder that holds `packages/` and `node_modules/`
 * @returns the breaches, and the imports of every file seen
 * @throws Error when the cruiser gives no structured answer
 */
export async function cruiseHouse(house: string): Promise<Cruise> {
  const { output } = await cruise(['packages'], {
    baseDir: house,
    validate: true,
    ruleSet: { forbidden: [...rules] },
    doNotFollow: { path: '(^|/)node_modules/' },
    exclude: { path: '(^|/)(dist|test-results|[.]cache)/' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
    },
  });
  if (typeof output === 'string') {
    throw new Error('dependency-cruiser answered with text instead of its result; was an output type set?');
  }
  return { breaches: breaches(output), imports: imports(output) };
}

function breaches(result: ICruiseResult): Breach[] {
  return result.summary.violations.map(({ rule, from, to }) => ({
    rule: rule.name,
    from,
    to,
    remedy: rules.find(({ name }) => name === rule.name)?.comment ?? '',
  }));
}

function imports(result: ICruiseResult): Map<string, Map<string, string>> {
  return new Map(
    result.modules.map((module) => [
      module.source,
      new Map(module.dependencies.map((dependency) => [dependency.module, dependency.resolved])),
    ]),
  );
}

/** Every TypeScript source on disk under `packages/<name>/src`, relative to the house: the cruiser's independent witness. */
export function sourcesOnDisk(house: string): string[] {
  return readdirSync(join(house, 'packages')).flatMap((name) => {
    const sources = join('packages', name, 'src');
    if (!existsSync(join(house, sources))) return [];
    return readdirSync(join(house, sources), { recursive: true, encoding: 'utf8' })
      .filter((path) => /[.]tsx?$/.test(path) && !path.endsWith('.d.ts'))
      .map((path) => join(sources, path).replaceAll('\\', '/'));
  });
}

/** The doors of other packages a file names, read from its text without a parser. */
export function doorsNamed(house: string, path: string): string[] {
  const text = readFileSync(join(house, path), 'utf8');
  return [...text.matchAll(/^\s*(?:import|export|[}])\s[^'"]*?from '(@combside\/[^']+)'/gm)].flatMap(
    ([, door]) => door ?? [],
  );
}
