import { useEffect, useRef } from 'preact/hooks';
import type { Stamp } from '../../domain/records/stamp';
import type { ElementDefinition } from '../../domain/shop/element-definition';
import type { Reading, StudyWatch } from '../../domain/study/study';
import { study } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';
import { timeWords } from './time-words';

const words = study.observe;

interface Props {
  readonly elements: readonly ElementDefinition[];
  readonly readings: readonly Reading[];
  /** Null before the first tap. */
  readonly watch: StudyWatch | null;
  readonly lanes: number;
  /** Null where nothing is timed. */
  readonly acts: {
    /** Says that another element is in hand. */
    readonly choose: (elementNo: number) => void;
    /** An occasional element begins, timed apart. */
    readonly begin: (elementNo: number, at: Stamp) => void;
    /** Writes on a reading. */
    readonly remark: (reading: Reading) => void;
  } | null;
}

/** The elements with the one in hand marked, and what was read of them in this cycle and the one before. */
export function LiveElementSheet({ elements, readings, watch, lanes, acts }: Props) {
  const cycle = watch?.cycle ?? 1;
  const recent = lastTwoCycles(readings, cycle);
  const isApart = watch !== null && watch.aside !== null;
  const inHand = watch ? (watch.aside ? watch.aside.elementIndex : watch.elementIndex) : null;
  const places = elements.map((element, index) => ({ element, index }));
  const inCycle = places.filter(({ element }) => element.elementClass === 'repetitive');
  const apart = places.filter(({ element }) => element.elementClass === 'occasional');
  return (
    <table class="sheet study-live">
      <caption class="visually-hidden">{words.sheet}</caption>
      <colgroup>
        <col class="study-live-columns-number" />
        <col />
        <col class="study-live-columns-time" />
        <col class="study-live-columns-time" />
      </colgroup>
      <thead>
        <tr>
          <th scope="col" class="words" colSpan={2}>
            {words.sheet}
          </th>
          <th scope="col">{cycle > 1 ? `${words.cycle} ${cycle - 1}` : words.before}</th>
          <th scope="col">
            {words.cycle} {cycle}
          </th>
        </tr>
      </thead>
      <tbody>{inCycle.map(row)}</tbody>
      <tbody class="study-live-apart">{apart.map(row)}</tbody>
    </table>
  );

  /** What a tap on the name does. The machine beside the operator is not chosen, nor anything while something is apart. */
  function actOf({ elementClass, work }: ElementDefinition, index: number): ((at: Stamp) => void) | null {
    if (!acts || isApart || index === inHand) return null;
    if (elementClass === 'occasional') return (at) => acts.begin(index + 1, at);
    return lanes === 2 && work === 'machine' ? null : () => acts.choose(index + 1);
  }

  function row({ element, index }: { element: ElementDefinition; index: number }) {
    const isMissed = watch?.merged.some((missed) => missed.elementIndex === index && missed.cycle === cycle);
    const own = (wanted: number) =>
      recent.filter(({ row: { elementNo, cycle: of } }) => elementNo === index + 1 && of === wanted).at(-1);
    return (
      <LiveRow
        key={index}
        number={index + 1}
        element={element}
        isInHand={index === inHand}
        isHeld={isApart && index === watch.elementIndex}
        isMissed={isMissed ?? false}
        isRunning={watch?.machine?.elementIndex === index}
        onTap={actOf(element, index)}
        onRemark={acts?.remark ?? null}
        before={own(cycle - 1)}
        now={own(cycle)}
      />
    );
  }
}

interface RowProps {
  readonly number: number;
  readonly element: ElementDefinition;
  readonly isInHand: boolean;
  /** It waits while something is timed apart from it. */
  readonly isHeld: boolean;
  readonly isMissed: boolean;
  /** The machine works at it beside the operator. */
  readonly isRunning: boolean;
  readonly onTap: ((at: Stamp) => void) | null;
  readonly onRemark: ((reading: Reading) => void) | null;
  readonly before: Reading | undefined;
  readonly now: Reading | undefined;
}

function LiveRow(props: RowProps) {
  const { number, element, isInHand, isHeld, isMissed, isRunning, onTap, onRemark, before, now } = props;
  const isOccasional = element.elementClass === 'occasional';
  const line = useRef<HTMLTableRowElement>(null);
  // A method longer than the sheet scrolls itself: nobody has a hand free for it.
  useEffect(() => {
    if (isInHand) line.current?.scrollIntoView({ block: 'nearest' });
  }, [isInHand]);
  return (
    <tr
      ref={line}
      class={isInHand ? 'study-live-hand' : isHeld ? 'study-live-held' : ''}
      aria-current={isInHand ? 'step' : undefined}
    >
      <td class="study-live-number">{isInHand || isHeld ? `▸ ${number}` : number}</td>
      <td class="words study-live-name">
        <NameCell name={element.name} isOccasional={isOccasional} onTap={onTap} />
      </td>
      <td class="study-live-name">{before && <ReadingCell reading={before} onRemark={onRemark} />}</td>
      <td class="study-live-name">
        {isRunning
          ? words.runs
          : isMissed
            ? words.missedMark
            : now && <ReadingCell reading={now} onRemark={onRemark} />}
      </td>
    </tr>
  );
}

/**
 * An occasional element begins at the press, because that moment is timed. Another element is taken in hand at the
 * click: no time hangs on it, and a finger that scrolls the sheet must not choose.
 */
function NameCell({
  name,
  isOccasional,
  onTap,
}: Pick<RowProps, 'onTap'> & { name: string; isOccasional: boolean }) {
  const { clock } = useApp().bench;
  const twoLines = <span class="study-live-words">{name}</span>;
  if (!onTap) return twoLines;
  if (isOccasional) {
    return (
      <TimingButton class="study-live-choose" onTap={onTap}>
        {name}
        <span class="study-action-what">{words.occasionalWhat}</span>
      </TimingButton>
    );
  }
  return (
    <button type="button" class="study-live-choose" onClick={(event) => onTap(clock.stampOf(event))}>
      {twoLines}
      <span class="visually-hidden">{words.chooseIt}</span>
    </button>
  );
}

/** What was read, and the place to write a word on it. */
function ReadingCell({ reading, onRemark }: { reading: Reading } & Pick<RowProps, 'onRemark'>) {
  const { element, cycle, observedMs, ratingPct, excluded, carried } = reading.row;
  if (observedMs === null) return <>{words.missedMark}</>;
  const said = (
    <>
      <span class="study-live-rating">{ratingPct}</span>{' '}
      <span class={excluded === null ? '' : 'struck'}>{timeWords.min.reading(observedMs)}</span>
      {carried.note && <sup>{studySheet.observation.remarkLetter}</sup>}
    </>
  );
  if (!onRemark) return said;
  return (
    <button type="button" class="study-live-choose" onClick={() => onRemark(reading)}>
      {said}
      <span class="visually-hidden">: {words.remarkOn(element, cycle)}</span>
    </button>
  );
}

/** From the end, because a long study has thousands. */
function lastTwoCycles(readings: readonly Reading[], cycle: number): Reading[] {
  const found: Reading[] = [];
  for (let place = readings.length - 1; place >= 0; place -= 1) {
    const reading = readings[place]!;
    // One cycle further back: an occasional element may have ended across the border.
    if (reading.row.cycle < cycle - 2) break;
    found.unshift(reading);
  }
  return found;
}
