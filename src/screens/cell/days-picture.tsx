import { Histogram } from '../../charts/histogram';
import { roundTicks } from '../../charts/round-ticks';
import { countsBetween } from '../../domain/cell/counts-between';
import type { SimulatedRun } from '../../domain/cell/simulated-days';
import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import { formatNumber } from '../../i18n/format-number';
import { useWidth } from '../review/use-width';

/** How many good parts a day gives, now and then, on one scale. */
export function DaysPicture({ runs }: { runs: readonly SimulatedRun[] }) {
  const { ref, width } = useWidth();
  const all = runs.flatMap(({ run }) => run.goodByDay);
  const low = Math.min(...all);
  const high = Math.max(low + 1, ...all);
  // Parts are whole: no bar is narrower than one.
  const edges = roundTicks(low, high, Math.max(2, Math.min(22, high - low + 1)), true);
  return (
    <div ref={ref} class="stack">
      {width > 0 &&
        runs.map(({ run, summary }, place) => {
          const { lowGood, medianGood, highGood } = summary;
          const [p10, half, p90] = [lowGood, medianGood, highGood].map((value) => formatNumber(value)) as [
            string,
            string,
            string,
          ];
          const title = `${says.daysTitle}, ${place === 0 ? says.present : says.proposed}`;
          return (
            <figure key={title} class="cell-picture">
              <figcaption class="small">
                <strong>{title}</strong>
              </figcaption>
              <Histogram
                id={`cell-days-${place}`}
                title={title}
                description={says.daysSay(p10, half, p90)}
                width={width}
                height={110}
                edges={edges}
                counts={countsBetween(run.goodByDay, edges)}
                marks={[
                  { at: lowGood, text: `${says.p10} ${p10}`, isBefore: true },
                  { at: medianGood, text: `${says.median} ${half}` },
                  { at: highGood, text: `${says.p90} ${p90}` },
                ]}
                tickText={formatNumber}
              />
            </figure>
          );
        })}
    </div>
  );
}
