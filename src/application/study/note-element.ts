import type { Study } from '../../domain/study/study';
import type { Bench } from '../bench';
import { noteInHand } from './note-in-hand';
import { noteReading } from './note-reading';

/** What was in hand when somebody began to write about it. */
export interface WrittenOn {
  readonly cycle: number;
  readonly elementNo: number;
  readonly beganAtMs: number;
}

/** What is in hand now; a foreign element has the number after the last of the method, as its reading will. */
export function inHandOf({ watch, heading }: Study): WrittenOn {
  const { aside } = watch;
  // Whose end was not seen is still in hand while its operator waits for the machine.
  const { cycle, elementIndex } = (watch.isWaiting ? watch.merged.at(-1) : undefined) ?? watch;
  const place = aside ? (aside.elementIndex ?? heading?.elements.length ?? 0) : elementIndex;
  return { cycle, elementNo: place + 1, beganAtMs: (aside ?? watch).beganAtMs };
}

/** A word on an element: while it is in hand on what is in hand, and once it has ended on its reading. */
export function noteElement(bench: Bench, on: WrittenOn, note: string): void {
  const study = bench.study.value;
  if (study?.status !== 'open') return;
  const isInHand = JSON.stringify(inHandOf(study)) === JSON.stringify(on);
  const reading = study.readings.findLast(
    ({ row }) => row.cycle === on.cycle && row.elementNo === on.elementNo,
  );
  if (isInHand || !reading) noteInHand(bench, note);
  else noteReading(bench, study, reading.id, note);
}
