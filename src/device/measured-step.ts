import { COARSE_STEP_MS } from '../domain/records/coarse-clock';

/** So many looks are 100 ms and more; a clock that has not moved by then stands still, and tells nothing of its steps. */
const MOST_LOOKS = 5_000_000;
/** A page that was busy between two looks has seen a long step; three times in a row it was not. */
const TRIES = 3;

/** The shortest of a few steps that the clock makes while it is looked at. A fine clock is found out at once. */
export function measuredStepMs(): number {
  let shortest = Number.POSITIVE_INFINITY;
  for (let tries = 0; tries < TRIES && shortest > COARSE_STEP_MS; tries += 1) {
    const begin = nextStep();
    shortest = Math.min(shortest, nextStep() - begin);
  }
  return shortest;
}

function nextStep(): number {
  const from = performance.now();
  let now = from;
  for (let looks = 0; now === from && looks < MOST_LOOKS; looks += 1) now = performance.now();
  return now;
}
