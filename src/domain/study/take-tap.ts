import type { StudyFact } from '../records/study-fact';
import type { ClockFact } from '../records/turn-fact';
import { newReading, type WatchInHand } from './watch-in-hand';

/** Takes one record of an open study to the watch: what it ends becomes a reading, what it begins is in hand. */
export function takeTap(study: WatchInHand, fact: StudyFact | ClockFact, key: string, atMs: number): void {
  const { watch } = study;
  switch (fact.kind) {
    case 'element-ended':
      endElement(study, fact.ratingPct, key, atMs);
      break;
    case 'break-point-missed':
      watch.merged = [...watch.merged, { cycle: watch.cycle, elementIndex: watch.elementIndex }];
      advance(study);
      break;
    case 'foreign-began':
      watch.aside = { elementIndex: null, beganAtMs: atMs, note: '' };
      break;
    case 'occasional-began':
      watch.aside = { elementIndex: fact.elementNo - 1, beganAtMs: atMs, note: '' };
      break;
    case 'foreign-ended':
      endAside(study, key, atMs, 100, fact.description);
      break;
    case 'occasional-ended':
      endAside(study, key, atMs, fact.ratingPct, '');
      break;
    case 'in-hand-noted':
      if (watch.aside) watch.aside = { ...watch.aside, note: fact.note };
      else watch.note = fact.note;
      break;
    case 'slept':
      study.clockFlag = 'slept';
      break;
  }
}

function endElement(study: WatchInHand, ratingPct: number, key: string, atMs: number): void {
  const { watch, readings } = study;
  const mergedCause = watch.merged.length > 0 ? 'missed-break-point' : null;
  for (const [place, missed] of watch.merged.entries()) {
    readings.push(
      newReading(study, `${key}#${place}`, {
        cycle: missed.cycle,
        elementIndex: missed.elementIndex,
        observedMs: null,
        ratingPct: 100,
        excluded: 'missed-break-point',
        isMerged: true,
      }),
    );
  }
  readings.push(
    newReading(study, key, {
      cycle: watch.cycle,
      elementIndex: watch.elementIndex,
      observedMs: atMs - watch.beganAtMs - watch.apartMs,
      ratingPct,
      excluded: mergedCause ?? (study.clockFlag === 'slept' ? 'tablet-slept' : null),
      note: watch.note,
      isMerged: mergedCause !== null,
    }),
  );
  watch.merged = [];
  watch.beganAtMs = atMs;
  watch.apartMs = 0;
  watch.note = '';
  study.clockFlag = '';
  advance(study);
}

function endAside(study: WatchInHand, key: string, atMs: number, ratingPct: number, said: string): void {
  const { watch } = study;
  if (!watch.aside) return;
  const { elementIndex, beganAtMs, note } = watch.aside;
  const observedMs = atMs - beganAtMs;
  study.readings.push(
    newReading(study, key, {
      cycle: watch.cycle,
      elementIndex,
      observedMs,
      ratingPct,
      excluded: study.clockFlag === 'slept' ? 'tablet-slept' : null,
      note: said || note,
    }),
  );
  watch.apartMs += observedMs;
  watch.aside = null;
}

function advance({ watch, order }: WatchInHand): void {
  const place = order.indexOf(watch.elementIndex);
  if (place === order.length - 1) watch.cycle += 1;
  watch.elementIndex = order[(place + 1) % order.length] ?? -1;
}
