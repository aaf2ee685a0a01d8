import { goodPartBridge } from '../../../domain/day/good-part-bridge';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';

const words = reviewDayMore.bridge;
const MINUTE_MS = 60_000;

/** From the mean net cycle to attended time per good part, step by step; printed so that it adds up. */
export function BridgeTable({ day }: { day: DaySummary }) {
  const bridge = goodPartBridge(day);
  if (!bridge) return null;
  const steps = bridge.steps.filter(({ ms }) => Math.abs(ms) >= 1);
  const [net, ...minutes] = roundedSteps([bridge.netMs, ...steps.map(({ ms }) => ms)]);
  return (
    <>
      <table class="sheet review-sheet review-narrow">
        <thead>
          <tr>
            <th scope="col" class="words">
              {words.step}
            </th>
            <th scope="col">{words.minutes}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row" class="words">
              {words.net}
            </th>
            <td>{formatNumber(net!, 3)}</td>
          </tr>
          {steps.map(({ step }, place) => (
            <tr key={step}>
              <th scope="row" class="words">
                {words.steps[step]}
              </th>
              <td>
                {minutes[place]! < 0 ? '' : '+\u2009'}
                {formatNumber(minutes[place]!, 3)}
              </td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td>{words.perGood}</td>
            <td>
              {formatNumber(bridge.perGoodMs / MINUTE_MS, 3)}
              <small>{roundedClockFace(bridge.perGoodMs)}</small>
            </td>
          </tr>
        </tfoot>
      </table>
      <p class="small quiet">{words.note}</p>
    </>
  );
}

/** Minutes of each step, rounded where they stand in the sum: what is printed adds up to what is printed. */
function roundedSteps(steps: readonly number[]): number[] {
  let sumMs = 0;
  let before = 0;
  return steps.map((ms) => {
    sumMs += ms;
    const sum = Math.round(sumMs / 60) / 1_000;
    const step = sum - before;
    before = sum;
    return step;
  });
}
