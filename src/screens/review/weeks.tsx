import { useState } from 'preact/hooks';
import { partRun } from '../../domain/day/part-run';
import { partsMade } from '../../domain/day/parts-made';
import type { DayReview } from '../../domain/day/review-day';
import { review } from '../../i18n/en/review';
import { useApp } from '../app';
import { RunPicture } from './run-picture';
import { RunSheet } from './run-sheet';
import type { Working } from './working';

const words = review.weeks;

interface Props {
  /** Newest first. */
  readonly days: readonly DayReview[];
  readonly chosen: string;
  readonly hasOlder: boolean;
  readonly readOlder: () => void;
  readonly open: (working: Working) => void;
  readonly pickDay: (day: string) => void;
}

/** The daily averages of one part over the weeks, as a run chart and as the same figures in a sheet. */
export function Weeks({ days, chosen, hasOlder, readOlder, open, pickDay }: Props) {
  const { bench } = useApp();
  const made = partsMade(days);
  const [wanted, setWanted] = useState('');
  const mostMade = made.reduce<(typeof made)[number] | null>(
    (most, part) => (most && most.done >= part.done ? most : part),
    null,
  );
  const part = made.find((each) => each.part === wanted) ?? mostMade;
  if (!part) return null;
  const methods = bench.shop.value.parts.find(({ id }) => id === part.part)?.methods;
  const run = partRun(days, part.part, methods);
  return (
    <section class="stack" aria-labelledby="review-weeks-title">
      <h2 id="review-weeks-title">{words.title}</h2>
      <fieldset class="choices review-parts">
        <legend class="visually-hidden">{words.part}</legend>
        {made.map((each) => (
          <button
            key={each.part}
            type="button"
            class="choice"
            aria-pressed={each.part === part.part}
            onClick={() => setWanted(each.part)}
          >
            {each.partCode}
          </button>
        ))}
      </fieldset>
      {run.days.length === 1 ? (
        <p>{words.oneDay}</p>
      ) : (
        <RunPicture run={run} partCode={part.partCode} chosen={chosen} />
      )}
      <RunSheet run={run} partCode={part.partCode} chosen={chosen} open={open} pickDay={pickDay} />
      {hasOlder && (
        <div class="row no-print">
          <button type="button" class="button" onClick={readOlder}>
            {words.older}
          </button>
        </div>
      )}
    </section>
  );
}
