import type { Stamp } from '../../domain/records/stamp';
import type { Bench } from '../bench';

/** The break point of what is in hand: of what is timed apart when something is, else of the element. */
export function endElement(bench: Bench, at: Stamp, ratingPct: number): void {
  const study = bench.study.value;
  if (study?.status !== 'open' || !study.heading) return;
  const { aside, elementIndex } = study.watch;
  if (aside?.elementIndex === null) {
    bench.record(study.id, [{ kind: 'foreign-ended', description: '' }], at);
  } else if (aside) {
    bench.record(study.id, [{ kind: 'occasional-ended', ratingPct }], at);
  } else {
    // What the machine governs cannot be worked faster: its rating is 100, whatever was chosen before.
    const isMachine = study.heading.elements[elementIndex]?.work === 'machine';
    bench.record(study.id, [{ kind: 'element-ended', ratingPct: isMachine ? 100 : ratingPct }], at);
  }
}
