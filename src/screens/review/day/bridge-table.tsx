import { goodPartBridge } from '../../../domain/day/good-part-bridge';
import type { DaySummary } from '../../../domain/day/summarise-day';
import { reviewDayMore } from '../../../i18n/en/review-day-more';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { roundedSteps } from '../rounded-steps';

const words = reviewDayMore.bridge;
const MINUTE_MS = 60_000;

/** From the mean net cycle to attended time per good part, step by step; printed so that it adds up. */
export function BridgeTable({ day }: { day: DaySummary }) {
  const bridge = goodPartBridge(day);
  if (!bridge) return null;
  const steps = bridge.steps.filter(({ ms }) => Math.abs(ms) >= 1);
  // To a thousandth of a minute.
  const [net, ...minutes] = roundedSteps([bridge.netMs, ...steps.map(({ ms }) => ms)], 60).map(
    (ms) => ms / MINUTE_MS,
  );
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
