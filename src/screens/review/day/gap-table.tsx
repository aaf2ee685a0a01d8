import type { GapStep } from '../../../domain/day/day-gap';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';
import { roundedSteps } from '../rounded-steps';

const words = reviewDayMore.fair.gap;
/** A tenth of a second. */
const SHOWN_MS = 100;

/** What made a good part take longer, or less long, than on the other day: the mix, the hands, and what stood still. */
export function GapTable({ steps }: { steps: readonly GapStep[] }) {
  const shown = roundedSteps(
    steps.map(({ ms }) => ms),
    SHOWN_MS,
  );
  const all = shown.reduce((sum, ms) => sum + ms, 0);
  return (
    <>
      <table class="sheet review-sheet review-narrow">
        <thead>
          <tr>
            <th scope="col" class="words">
              {words.title}
            </th>
            <th scope="col">{words.seconds}</th>
          </tr>
        </thead>
        <tbody>
          {steps.map(
            ({ cause, ms }, place) =>
              // A cause that neither day knows has no line.
              ms !== 0 && (
                <tr key={cause}>
                  <th scope="row" class="words">
                    {words.causes[cause]}
                  </th>
                  <td>{signed(shown[place]!)}</td>
                </tr>
              ),
          )}
        </tbody>
        <tfoot>
          <tr>
            <td>{words.all}</td>
            <td>{signed(all)}</td>
          </tr>
        </tfoot>
      </table>
      <p class="small quiet">{words.note}</p>
    </>
  );
}

function signed(ms: number): string {
  const seconds = formatNumber(Math.abs(ms) / 1_000, 1);
  if (Math.abs(ms) < SHOWN_MS / 2) return seconds;
  return `${ms < 0 ? '−' : '+'}\u2009${seconds}`;
}
