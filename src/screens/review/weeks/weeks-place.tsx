import { useState } from 'preact/hooks';
import { partsMade } from '../../../domain/day/parts-made';
import { daysRun } from '../../../domain/weeks/days-run';
import type { RunFigure } from '../../../domain/weeks/run-figures';
import { runFigures } from '../../../domain/weeks/run-figures';
import { reviewWeeks as words } from '../../../i18n/en/review-weeks';
import { useApp } from '../../app';
import type { PlaceProps } from '../place-props';
import { DayNotes } from './day-notes';
import { LostPareto } from './lost-pareto';
import { PeopleFigures } from './people-figures';
import { RunOfDays } from './run-of-days';
import { RunTable } from './run-table';
import { StepsOfDays } from './steps-of-days';
import { WrongStandards } from './wrong-standards';

const ofAllParts = ['efficiency', 'per-good', 'first-pass'] as const;

/** What the weeks say: a run with its limits, what cost most, and targets that look wrong. */
export function WeeksPlace({ days, book }: PlaceProps) {
  const { bench } = useApp();
  const [wanted, setWanted] = useState<RunFigure>('efficiency');
  const made = partsMade(days);
  const part = typeof wanted === 'string' ? undefined : made.find((each) => each.part === wanted.part);
  const figure = typeof wanted === 'string' || part ? wanted : 'efficiency';
  const name = typeof figure === 'string' ? words.figures[figure] : words.part(part!.partCode);
  const noted = book.notes.filter(({ isChange }) => isChange);
  const methods = bench.shop.value.parts.find(({ id }) => id === part?.part)?.methods ?? [];
  const changes = [
    ...methods.map(({ writtenOn, revision }) => ({ day: writtenOn, text: words.method(revision) })),
    ...noted.map(({ day, text }) => ({ day, text })),
  ];
  const values = runFigures(days, figure);
  const stretches = daysRun(
    values,
    changes.map(({ day }) => day),
  );
  return (
    <>
      <RunOfDays
        figure={figure}
        name={name}
        values={values}
        stretches={stretches}
        changes={changes}
        days={days}
      >
        <fieldset class="choices review-parts no-print">
          <legend class="visually-hidden">{words.figure}</legend>
          {ofAllParts.map((each) => (
            <button
              key={each}
              type="button"
              class="choice"
              aria-pressed={figure === each}
              onClick={() => setWanted(each)}
            >
              {words.figures[each]}
            </button>
          ))}
          {made.map((each) => (
            <button
              key={each.part}
              type="button"
              class="choice"
              aria-pressed={each.part === part?.part}
              aria-label={words.part(each.partCode)}
              onClick={() => setWanted({ part: each.part })}
            >
              {each.partCode}
            </button>
          ))}
        </fieldset>
      </RunOfDays>
      <StepsOfDays figure={figure} name={name} newest={stretches.at(-1)} />
      <RunTable figure={figure} values={values} stretches={stretches} notes={book.notes} />
      <LostPareto days={days} book={book} />
      <WrongStandards days={days} />
      <DayNotes days={days} notes={book.notes} />
      <PeopleFigures days={days} book={book} />
    </>
  );
}
