import type { Stamp } from '../../domain/records/stamp';
import { elementSoFar } from '../../domain/study/element-so-far';
import type { Study } from '../../domain/study/study';
import { slipOf } from '../../domain/study/too-quick';
import { study as allWords } from '../../i18n/en/study';
import { TimingButton } from '../timing-button';
import { lastReadingWords } from './last-reading-words';
import { ProgressLine } from './progress-line';
import { timeWords } from './time-words';

const words = allWords.observe;

interface Props {
  readonly study: Study;
  readonly disabled: boolean;
  readonly onTap: (at: Stamp) => void;
}

/** The one place to tap: it ends what is in hand, be it the element or something timed apart. */
export function BreakPointSurface({ study, disabled, onTap }: Props) {
  const { title, point, elementNo, isApart } = inHandWords(study);
  return (
    <>
      <p class="visually-hidden" role="status">
        {words.status(title, study.watch.cycle)}
      </p>
      <TimingButton
        class={isApart ? 'study-surface study-surface-apart' : 'study-surface'}
        disabled={disabled}
        onTap={onTap}
      >
        <span class="study-surface-edge">
          <LastReading study={study} />
        </span>
        <strong class="study-surface-name">{elementNo === null ? title : `${elementNo}  ${title}`}</strong>
        <span class="study-surface-point">{point}</span>
        <span class="study-surface-edge">
          <span class="number">{elementNo === null ? '' : soFar(study, elementNo)}</span>
          <ProgressLine study={study} />
        </span>
      </TimingButton>
    </>
  );
}

interface InHand {
  readonly title: string;
  readonly point: string;
  /** Null where no element of the method runs. */
  readonly elementNo: number | null;
  /** Drawn as an outline: the tap ends something else than an element in its order. */
  readonly isApart: boolean;
}

function inHandWords(study: Study): InHand {
  const elements = study.heading?.elements ?? [];
  const { aside, elementIndex, isWaiting, isHeld, machine } = study.watch;
  const name = elements[elementIndex]?.name ?? '';
  if (isHeld) return { title: words.held, point: words.heldWhen(name), elementNo: null, isApart: true };
  if (aside) {
    const apart = aside.elementIndex === null ? null : elements[aside.elementIndex];
    return {
      title: apart?.name ?? (aside.note || words.foreignElement),
      point: words.apartInside(name),
      elementNo: aside.elementIndex === null ? null : aside.elementIndex + 1,
      isApart: true,
    };
  }
  if (isWaiting) {
    const title = words.waiting(elements[machine?.elementIndex ?? -1]?.name ?? words.machine);
    return { title, point: words.waitingWhen(name), elementNo: null, isApart: true };
  }
  const ends = elements[elementIndex]?.breakPoint;
  return {
    title: name,
    point: ends ? words.breakPoint(ends) : '',
    elementNo: elementIndex + 1,
    isApart: false,
  };
}

/** What was read last; after two taps in one moment, that the second may have been a slip. */
function LastReading({ study }: { study: Study }) {
  const last = study.readings.at(-1);
  const slip = slipOf(study);
  const isAtMachine = study.heading?.lanes === 2 && slip?.row.work === 'machine';
  if (slip && !isAtMachine) return <span>{words.twoTaps(timeWords.s.said(slip.row.observedMs!))}</span>;
  return (
    <>
      <span>{study.watch.isHeld ? '' : study.watch.isWaiting ? words.waitingFor : words.tapWhen}</span>
      {last && <span class="number">{lastReadingWords(last.row)}</span>}
    </>
  );
}

function soFar(study: Study, elementNo: number): string {
  const { n, observedMeanMs } = elementSoFar(study.readings, elementNo);
  return observedMeanMs === null
    ? words.noneYet
    : words.soFar(n, `${timeWords.min.figure(observedMeanMs)} ${allWords.minutes}`);
}
