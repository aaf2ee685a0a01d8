import { dayMinute } from '../../../domain/day/day-minute';
import { attendedUntilMs } from '../../../domain/weeks/attended-until';
import { partsWithin } from '../../../domain/weeks/parts-within';
import { promisesWords } from '../../../i18n/en/promises';
import { formatDay } from '../../../i18n/format-day';
import { clockFace } from '../../../i18n/format-duration';
import { formatNumber } from '../../../i18n/format-number';
import { parseDecimal } from '../../../i18n/parse-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useApp } from '../../app';
import { type OrderTyped, orderInHand } from './order-in-hand';
import type { QuotedPart } from './quoted-part';
import type { shopEfficiency } from './shop-efficiency';

const words = promisesWords.quote;

interface Props {
  readonly part: QuotedPart;
  readonly setUpMs: number;
  readonly efficiency: ReturnType<typeof shopEfficiency>;
}

/** How many of the part can be made by the day that somebody asks about; nothing while nobody does. */
export function CountByDay({ part, setUpMs, efficiency: { efficiencies, mean, gave, dayMs } }: Props) {
  const { bench } = useApp();
  const order: OrderTyped = orderInHand(bench).value;
  const people = parseDecimal(order.people) ?? 0;
  if (order.until === '' || people <= 0) return null;
  const now = dayMinute(bench.clock.now());
  const attendedMs = attendedUntilMs(bench.shop.value.calendar, { ...order, people }, now);
  if (!attendedMs) return <p role="status">{words.noTimeUntil}</p>;
  const { parts, low, high } = partsWithin({ ...part, setUpMs }, efficiencies, dayMs, attendedMs);
  return (
    <div class="panel stack review-head">
      <p role="status">
        <strong>
          {words.countBy(formatDay(order.until), formatNumber(parts), part.code, mean !== null)}
        </strong>{' '}
        {low !== null && high !== null && words.countRange(formatNumber(low), formatNumber(high))}
      </p>
      <p class="small quiet">
        {words.countWorking(
          clockFace(attendedMs),
          mean === null ? null : formatNumber(100 * mean, 2),
          setUpMs > 0 ? roundedClockFace(setUpMs) : null,
          formatNumber(part.standardMs / 1_000, part.standardMs % 100 === 0 ? 1 : 3),
        )}{' '}
        {mean === null && words.noInterval(gave, efficiencies.length)}
      </p>
    </div>
  );
}
