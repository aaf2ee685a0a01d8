import { CycleRun } from '../../charts/cycle-run';
import type { StudyStability } from '../../domain/study/study-stability';
import { study as allWords } from '../../i18n/en/study';
import { studyReduce } from '../../i18n/en/study-reduce';
import { percentOf } from './percent-of';
import type { TimeWords } from './time-words';
import { usePortrait } from './use-portrait';

const words = studyReduce.steady;

interface Props {
  readonly stability: StudyStability;
  readonly time: TimeWords;
}

/** Whether the work stood still while it was studied: before an average there is a look at the order of time. */
export function SteadyPanel({ stability, time }: Props) {
  const isPortrait = usePortrait();
  const { cycleMs, limits, beyond } = stability;
  const said = sentences(stability);
  return (
    <section class="stack" aria-labelledby="study-steady">
      <h2 id="study-steady">{words.title}</h2>
      {limits && (
        <CycleRun
          id="study-cycles"
          title={words.chart}
          description={said.join(' ')}
          width={isPortrait ? 740 : 1000}
          values={cycleMs}
          {...limits}
          ringed={beyond}
          valueText={time.figure}
        />
      )}
      {said.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p class="quiet small">{words.source}</p>
    </section>
  );
}

function sentences(found: StudyStability): string[] {
  const { cycleMs, cycles, isTrendTested, trend, change, isOutOfOrder, hasLongRun, beyond, spread } = found;
  if (!spread) return [words.few(cycleMs.length)];
  const said = [
    trend === null
      ? words[isTrendTested ? 'none' : 'trendFew'](cycleMs.length)
      : words[trend](percentOf(Math.abs(change ?? 0))),
  ];
  if (isOutOfOrder) said.push(words.order);
  if (hasLongRun) said.push(words.run);
  if (beyond.length > 0) said.push(words.beyond(allWords.and(beyond.map((place) => String(cycles[place])))));
  const [from, to] = [percentOf(spread.observed), percentOf(spread.rated)];
  // Ratings that are all the same change no spread.
  if (from !== to) said.push(spread.rated < spread.observed ? words.closer(from, to) : words.wider(from, to));
  return said;
}
