import type { Stamp } from '../../domain/records/stamp';
import { elementSoFar } from '../../domain/study/element-so-far';
import type { Reading, Study } from '../../domain/study/study';
import { tooQuick } from '../../domain/study/too-quick';
import { study as allWords } from '../../i18n/en/study';
import { TimingButton } from '../timing-button';
import { timeWords } from './time-words';

const words = allWords.observe;

interface Props {
  readonly study: Study;
  readonly disabled: boolean;
  readonly onTap: (at: Stamp) => void;
}

/** The one place to tap: it ends what is in hand, be it the element or something timed apart. */
export function BreakPointSurface({ study, disabled, onTap }: Props) {
  const elements = study.heading?.elements ?? [];
  const { aside, elementIndex } = study.watch;
  const inCycle = elements[elementIndex];
  const apart = aside?.elementIndex == null ? null : elements[aside.elementIndex];
  const shown = aside ? apart : inCycle;
  const number = (aside ? aside.elementIndex : elementIndex) ?? null;
  const name = shown?.name ?? words.foreignElement;
  const isForeign = aside !== null && aside.elementIndex === null;
  return (
    <>
      <p class="visually-hidden" role="status">
        {words.status(name, study.watch.cycle)}
      </p>
      <TimingButton
        class={aside ? 'study-surface study-surface-apart' : 'study-surface'}
        disabled={disabled}
        onTap={onTap}
      >
        <span class="study-surface-edge">
          <LastReading study={study} />
        </span>
        <strong class="study-surface-name">{number === null ? name : `${number + 1}  ${name}`}</strong>
        <span class="study-surface-point">
          {aside
            ? words.apartInside(inCycle?.name ?? '')
            : shown?.breakPoint
              ? words.breakPoint(shown.breakPoint)
              : ''}
        </span>
        <span class="study-surface-edge">
          <span class="number">{isForeign ? '' : soFar(study, (number ?? 0) + 1)}</span>
        </span>
      </TimingButton>
    </>
  );
}

/** What was read last; after two taps in one moment, that the second may have been a slip. */
function LastReading({ study }: { study: Study }) {
  const last = study.readings.at(-1);
  const { undoable } = study;
  if (last && undoable?.key === last.id && tooQuick(study.readings).includes(last)) {
    return <span>{words.twoTaps(timeWords.s.said(last.row.observedMs!))}</span>;
  }
  return (
    <>
      <span>{words.tapWhen}</span>
      {last && <span class="number">{lastText(last)}</span>}
    </>
  );
}

function lastText({ row: { element, elementClass, work, observedMs, ratingPct } }: Reading): string {
  if (observedMs === null) return words.lastMissed(element);
  const time = timeWords.min.reading(observedMs);
  const isRated = elementClass !== 'foreign' && work !== 'machine';
  return isRated ? words.last(element, time, String(ratingPct)) : words.lastUnrated(element, time);
}

function soFar(study: Study, elementNo: number): string {
  const { n, observedMeanMs } = elementSoFar(study.readings, elementNo);
  return observedMeanMs === null
    ? words.noneYet
    : words.soFar(n, `${timeWords.min.figure(observedMeanMs)} ${allWords.minutes}`);
}
