import { useMemo } from 'preact/hooks';
import { cycleOrder, type Study } from '../../domain/study/study';
import { studyProgress } from '../../domain/study/study-progress';
import { usualPrecision } from '../../domain/study/summarise-study';
import { study as allWords } from '../../i18n/en/study';
import { formatNumber } from '../../i18n/format-number';

const words = allWords.progress;

/** How precise the cycle is by now, and what would help: more cycles, one element above all, or another operator. */
export function ProgressLine({ study: { readings, heading } }: { study: Study }) {
  const said = useMemo(() => {
    const { cycleMs, precision, more, watchNext, moreCannotHelp } = studyProgress(
      readings.map(({ row }) => row),
      usualPrecision,
      heading ? cycleOrder(heading.elements).length : 0,
    );
    if (precision === null) return words.cycles(cycleMs.length);
    const reached = words.reached(formatNumber(precision * 100, 1));
    if (moreCannotHelp) return `${reached} ${words.cannotHelp}`;
    if (more === 0) return `${reached} ${words.enough}`;
    return `${reached} ${words.more(more ?? 0, watchNext ?? '')}`;
  }, [readings, heading]);
  return <span>{said}</span>;
}
