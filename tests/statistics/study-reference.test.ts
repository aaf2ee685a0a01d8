import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** A case of an independent implementation: what it was given and what it answered. */
interface Case {
  readonly args: readonly unknown[];
  readonly out: unknown;
}
type Grid = Readonly<Record<string, readonly Case[]>>;
type Answer = (...args: unknown[]) => unknown;

const modules = import.meta.glob<Record<string, Answer>>('../../src/statistics/*.ts', { eager: true });
const functions: Readonly<Record<string, Answer>> = Object.assign({}, ...Object.values(modules));

const grid = (file: string): Grid => JSON.parse(readFileSync(file, 'utf8'));
// The tests read the small grid; the variable names a larger one, made as the script beside the grid says.
const ofR = grid(process.env.PACEWRIGHT_STUDY_REFERENCE ?? 'fixtures/reference/study-reference.json');
const ofManyDegrees = grid('fixtures/reference/high-df-reference.json');

/** How near, relatively. */
const nearByDefault = 1e-9;
const near: Readonly<Record<string, number>> = {
  // The reference rests on ptukey, which is itself good to about seven digits.
  requiredReadingsMeanRange: 1e-6,
};
/** An autocorrelation near 0 has no relative error; it is held absolutely. */
const scaleOf = (name: string) => (/autocorrelation/i.test(name) ? 1 : 0);

function farthest(name: string, ours: unknown, theirs: unknown): number {
  if (typeof theirs === 'number' && typeof ours === 'number') {
    return ours === theirs ? 0 : Math.abs(ours - theirs) / Math.max(Math.abs(theirs), scaleOf(name));
  }
  if (typeof theirs === 'object' && theirs !== null && typeof ours === 'object' && ours !== null) {
    const found = new Map(Object.entries(ours));
    return Math.max(...Object.entries(theirs).map(([key, value]) => farthest(key, found.get(key), value)));
  }
  return ours === theirs ? 0 : Number.POSITIVE_INFINITY;
}

function worstCase(name: string, cases: readonly Case[]): { far: number; args: readonly unknown[] } {
  let worst = { far: 0, args: [] as readonly unknown[] };
  for (const { args, out } of cases) {
    const far = farthest(name, functions[name]!(...args), out);
    if (!(far <= worst.far)) worst = { far, args };
  }
  return worst;
}

describe('answers of R to the same inputs (fixtures/reference/study-reference.R)', () => {
  it.each(Object.entries(ofR))('%s agrees', (name, cases) => {
    const { far, args } = worstCase(name, cases);
    expect(far, `at ${JSON.stringify(args)}`).toBeLessThanOrEqual(near[name] ?? nearByDefault);
  });
});

describe('quantiles from integrals of forty digits (fixtures/reference/high-df-reference.py)', () => {
  it.each(Object.entries(ofManyDegrees))('%s agrees up to a million degrees of freedom', (name, cases) => {
    const { far, args } = worstCase(name, cases);
    expect(far, `at ${JSON.stringify(args)}`).toBeLessThanOrEqual(nearByDefault);
  });
});
