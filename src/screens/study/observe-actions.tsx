import { beginForeign } from '../../application/study/begin-foreign';
import { holdWatch } from '../../application/study/hold-watch';
import { markInHand } from '../../application/study/mark-in-hand';
import { missBreakPoint } from '../../application/study/miss-break-point';
import { noteInHand } from '../../application/study/note-in-hand';
import type { ExclusionCause } from '../../domain/study/exclusion-cause';
import type { StudyWatch } from '../../domain/study/study';
import { study } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';

const words = study.observe;

interface Props {
  /** Null before the first tap. */
  readonly watch: StudyWatch | null;
  readonly isSnapback: boolean;
  /** Opens the line to write on. */
  readonly onRemark: () => void;
}

const OTHER_METHOD: ExclusionCause = 'method-not-followed';

/** What may happen beside the break points, each one tap; each says what it does before it is tapped. */
export function ObserveActions({ watch, isSnapback, onRemark }: Props) {
  const { bench, isReadOnly } = useApp();
  if (watch?.aside && watch.aside.elementIndex === null)
    return <ForeignCodes note={watch.aside.note} onRemark={onRemark} />;
  const isRemarkOff = watch === null || watch.aside !== null || watch.isHeld || isReadOnly;
  const isWaiting = watch?.isWaiting === true;
  const isOff = isRemarkOff || isWaiting;
  /** While the operator waits nothing is in hand, and the time is the wait's already. */
  const what = (does: string) => (isWaiting ? words.notWaiting : does);
  const { others, isFumbled } = remarksOf(watch);
  const fumble = () => {
    // Asked, not as drawn: a break point of the last few milliseconds has put another element in hand.
    const now = remarksOf(bench.study.peek()?.watch ?? null);
    noteInHand(bench, (now.isFumbled ? now.others : [...now.others, words.fumbleNote]).join('; '));
  };
  return (
    <>
      <TimingButton class="button study-action" disabled={isOff} onTap={(at) => beginForeign(bench, at)}>
        {words.foreign}
        <span class="study-action-what">{what(words.foreignWhat)}</span>
      </TimingButton>
      <TimingButton class="button study-action" disabled={isOff} onTap={() => missBreakPoint(bench)}>
        {words.missed}
        <span class="study-action-what">{what(words.missedWhat)}</span>
      </TimingButton>
      <TimingButton class="button study-action" pressed={isFumbled} disabled={isOff} onTap={fumble}>
        {words.fumble}
        <span class="study-action-what">{what(words.fumbleWhat)}</span>
      </TimingButton>
      <RemarkButton isPressed={others.length > 0} isOff={isRemarkOff} onRemark={onRemark} />
      <TimingButton
        class="button study-action"
        pressed={watch?.cause === OTHER_METHOD}
        disabled={isOff}
        onTap={() => markInHand(bench, OTHER_METHOD)}
      >
        {words.otherMethod}
        <span class="study-action-what">{what(words.otherMethodWhat)}</span>
      </TimingButton>
      {isSnapback && (
        <TimingButton class="button study-action" disabled={isOff} onTap={(at) => holdWatch(bench, at)}>
          {words.hold}
          <span class="study-action-what">{words.holdWhat}</span>
        </TimingButton>
      )}
    </>
  );
}

/** What was remarked on what is in hand, and whether a fumble is among it. */
function remarksOf(watch: StudyWatch | null): { others: string[]; isFumbled: boolean } {
  const remarks = (watch?.note ?? '').split('; ').filter((remark) => remark !== '');
  const others = remarks.filter((remark) => remark !== words.fumbleNote);
  return { others, isFumbled: others.length < remarks.length };
}

/** No time hangs on it, and the line to write on takes its place: it acts when it is let go. */
function RemarkButton({
  isPressed,
  isOff,
  onRemark,
}: { isPressed: boolean; isOff: boolean } & Pick<Props, 'onRemark'>) {
  return (
    <button
      type="button"
      class="button study-action"
      aria-pressed={isPressed}
      disabled={isOff}
      onClick={onRemark}
    >
      {studySheet.reading.note}
      <span class="study-action-what">{words.remarkWhat}</span>
    </button>
  );
}

/** While a foreign element runs: a word for it, of a few, or one of one's own. */
function ForeignCodes({ note, onRemark }: { note: string } & Pick<Props, 'onRemark'>) {
  const { bench, isReadOnly } = useApp();
  const isOwn = note !== '' && !words.foreignCodes.includes(note);
  const name = (code: string) => {
    // It may have ended in the last few milliseconds: the word is for nothing else.
    const aside = bench.study.peek()?.watch.aside;
    if (aside?.elementIndex === null) noteInHand(bench, aside.note === code ? '' : code);
  };
  return (
    <>
      {words.foreignCodes.map((code) => (
        <TimingButton
          key={code}
          class="choice study-action"
          pressed={note === code}
          disabled={isReadOnly}
          onTap={() => name(code)}
        >
          {code}
        </TimingButton>
      ))}
      <RemarkButton isPressed={isOwn} isOff={isReadOnly} onRemark={onRemark} />
    </>
  );
}
