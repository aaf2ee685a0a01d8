import { useMemo } from 'preact/hooks';
import { CombinationChart } from '../../charts/combination-chart';
import { combinationTable } from '../../domain/study/combination-table';
import type { StudySummary } from '../../domain/study/summarise-study';
import { studyReduce } from '../../i18n/en/study-reduce';
import type { TimeWords } from './time-words';
import { usePortrait } from './use-portrait';

const words = studyReduce.combination;

interface Props {
  readonly summary: StudySummary;
  /** The part's target, milliseconds: the time wanted; null where there is none. */
  readonly targetMs: number | null;
  readonly time: TimeWords;
}

/** Who works when in one cycle: drawn from the normal times of the summary. */
export function CombinationPanel({ summary, targetMs, time }: Props) {
  const table = useMemo(() => combinationTable(summary), [summary]);
  const isPortrait = usePortrait();
  if (!table) return null;
  const { steps, cycleMs, totals } = table;
  const sum = words.sum(time.said(cycleMs), time.said(totals.waiting));
  const starts = steps.flatMap(({ element, startsAfter }) =>
    startsAfter === '' ? [] : [words.starts(element, startsAfter)],
  );
  return (
    <section class="stack study-combination" aria-labelledby="study-combination">
      <h2 id="study-combination">{words.title}</h2>
      <CombinationChart
        id="study-combination-chart"
        title={words.title}
        description={sum}
        width={isPortrait ? 756 : 1080}
        lines={steps.map(({ element, elementNo, work, normalMs, bars }) => {
          const figure = time.figure(normalMs);
          const isWalk = work === 'walking';
          return {
            number: String(elementNo),
            name: element,
            times:
              work === 'machine' ? ['', figure, ''] : isWalk ? ['', '', figure] : ([figure, '', ''] as const),
            bars: bars.map(({ kind, fromMs, toMs }) => ({
              kind,
              from: fromMs / time.axisMs,
              to: toMs / time.axisMs,
            })),
          };
        })}
        cycle={cycleMs / time.axisMs}
        cycleText={words.cycle(time.figure(cycleMs))}
        takt={
          targetMs === null
            ? null
            : { value: targetMs / time.axisMs, text: words.target(time.figure(targetMs)) }
        }
        heads={words.heads}
        totals={[
          words.together,
          ...([totals.manual, totals.automatic, totals.walking].map(time.figure) as [string, string, string]),
        ]}
        tickText={time.axisText}
      />
      <p>{[sum, ...starts].join(' ')}</p>
      <p class="quiet small">{words.key}</p>
    </section>
  );
}
