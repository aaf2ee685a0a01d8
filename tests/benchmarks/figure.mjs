import { appendFileSync } from 'node:fs';

/**
 * A figure beside its floor of the same run: prints the ratio and judges it by its bound. `isAtLeast` where more is
 * better. Where every ratio is run, it goes into their table as well.
 */
export function figure({ name, unit = 'ms', ours, floor, bound, isAtLeast = false }) {
  const ratio = isAtLeast ? floor / ours : ours / floor;
  const isMet = isAtLeast ? ratio >= bound : ratio <= bound;
  const limit = `${isAtLeast ? 'at least' : 'at most'} ${bound}`;
  process.stdout.write(
    `${name}: ${digits(ours)} ${unit} beside ${digits(floor)}, ratio ${ratio.toFixed(2)} (${limit})${isMet ? '' : ' NOT MET'}\n`,
  );
  tell({ name, unit, ours: digits(ours), floor: digits(floor), ratio: ratio.toFixed(2), limit, isMet });
  if (!isMet) process.exitCode = 1;
}

/** What was not measured here, and why. */
export function notMeasured(name, why) {
  process.stdout.write(`${name}: not measured, ${why}\n`);
  tell({ name, why });
}

function tell(row) {
  if (process.env.PACEWRIGHT_FIGURES) {
    appendFileSync(process.env.PACEWRIGHT_FIGURES, `${JSON.stringify(row)}\n`);
  }
}

const digits = (value) => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

/** Median of a list. */
export const median = (list) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)];

/**
 * Milliseconds of one call of each: the quickest of so many rounds in turn, since what else runs on the machine only
 * adds.
 */
export function timedInTurn(calls, rounds = 15) {
  const quickest = calls.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < rounds; round += 1) {
    for (const [place, call] of calls.entries()) {
      const from = performance.now();
      call();
      quickest[place] = Math.min(quickest[place], performance.now() - from);
    }
  }
  return quickest;
}
