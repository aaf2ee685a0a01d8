import type { Stamp } from '../../domain/records/stamp';
import { requireRating } from '../../domain/study/require-rating';
import type { Bench } from '../bench';

/**
 * The break point of what is in hand: of what is timed apart when something is, else of the element. A watch that
 * stands goes on. A rating is judged where it was tapped for what ends here; else it stood from before.
 *
 * @throws {RangeError} endElement requires a rating above 0 and of at most 200
 */
export function endElement(bench: Bench, at: Stamp, ratingPct: number, judged?: boolean): void {
  const study = bench.study.value;
  if (study?.status !== 'open' || !study.heading) return;
  requireRating('endElement', ratingPct);
  const { aside, elementIndex, isHeld } = study.watch;
  if (isHeld) {
    bench.record(study.id, [{ kind: 'watch-went-on' }], at);
    return;
  }
  if (aside && aside.elementIndex === null) {
    bench.record(study.id, [{ kind: 'foreign-ended', description: '' }], at);
    return;
  }
  // What the machine governs cannot be worked faster: its rating is 100, whatever was chosen before.
  const element = study.heading.elements[aside?.elementIndex ?? elementIndex];
  const rated =
    element?.work === 'machine'
      ? { ratingPct: 100 }
      : { ratingPct, ...(judged === undefined ? {} : { judged }) };
  bench.record(study.id, [{ kind: aside ? 'occasional-ended' : 'element-ended', ...rated }], at);
}
