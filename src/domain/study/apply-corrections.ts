import type { PlacedRecord } from '../records/place-on-timeline';
import type { StudyHeading } from '../records/study-fact';
import type { AllowanceTerms } from './allowance-terms';
import type { FrequencySource } from './seen-frequency';
import type { Reading, Study } from './study';
import type { TypedClock } from './study-clock';
import type { StudyRow } from './study-row';
import { foreignName } from './watch-in-hand';

/** Applies what was decided afterwards: exclusions, restored readings, corrected ratings, notes, allowances … */
export function applyCorrections(
  readings: readonly Reading[],
  /** What was not taken back, in order. */
  placed: readonly PlacedRecord[],
  first: AllowanceTerms,
  heading: StudyHeading | null,
): Pick<Study, 'readings' | 'terms' | 'frequencies' | 'clock'> {
  const changes = new Map<string, Partial<StudyRow>>();
  const change = (id: string, part: Partial<StudyRow>) => changes.set(id, { ...changes.get(id), ...part });
  const notes = new Map<string, string>();
  /** Ratings that were judged late, while the study ran, and readings that were rated again once it was over. */
  const late = new Map<string, number>();
  const again = new Set<string>();
  let isOver = heading === null;
  const frequencies = new Map<number, FrequencySource>();
  const units = new Map<number, number>();
  let clock: TypedClock | null = null;
  let terms = first;
  for (const {
    record: { fact },
  } of placed) {
    if (fact.kind === 'reading-excluded') change(fact.reading, { excluded: fact.cause });
    else if (fact.kind === 'reading-restored') change(fact.reading, { excluded: null });
    else if (fact.kind === 'study-ended') isOver = true;
    else if (fact.kind === 'reading-rated') {
      change(fact.reading, { ratingPct: fact.ratingPct });
      if (isOver) again.add(fact.reading);
      else late.set(fact.reading, fact.ratingPct);
    } else if (fact.kind === 'reading-noted') notes.set(fact.reading, fact.note);
    else if (fact.kind === 'allowances-set') terms = fact.terms;
    else if (fact.kind === 'frequency-set') {
      frequencies.set(fact.elementNo, fact.source);
      units.set(fact.elementNo, fact.unitsPerOccurrence);
    } else if (fact.kind === 'clock-checked') {
      clock = { elapsedMs: fact.elapsedMs, beforeMs: fact.beforeMs, afterMs: fact.afterMs };
    }
  }
  return {
    terms,
    frequencies,
    clock,
    // While a study is timed this runs at every tap, and mostly nothing was corrected yet.
    readings: readings.map((reading) => {
      const changed = changes.get(reading.id);
      const note = notes.get(reading.id);
      const unitsPerOccurrence = units.get(reading.row.elementNo) ?? reading.row.unitsPerOccurrence;
      const isSame = terms === first && unitsPerOccurrence === reading.row.unitsPerOccurrence;
      if (!changed && note === undefined && isSame) return reading;
      const { allowancePct, basis, machineAllowancePct } = terms;
      const row = {
        ...reading.row,
        ...changed,
        unitsPerOccurrence,
        allowancePct,
        allowanceBasis: basis,
        machineAllowancePct,
      };
      const judgedPct = late.get(reading.id) ?? reading.row.ratingPct;
      return {
        ...reading,
        ...(late.has(reading.id) ? { judged: true } : {}),
        ...(again.has(reading.id) && judgedPct !== row.ratingPct ? { firstRatingPct: judgedPct } : {}),
        row: note === undefined ? row : noted(row, note, heading),
      };
    }),
  };
}

/** A foreign element goes by its note; any other keeps its name and has the note beside it. */
function noted(row: StudyRow, note: string, heading: StudyHeading | null): StudyRow {
  if (row.elementClass === 'foreign') return { ...row, element: foreignName(note, heading) };
  return { ...row, carried: { ...row.carried, note } };
}
