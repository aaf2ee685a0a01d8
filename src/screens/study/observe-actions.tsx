import { beginForeign } from '../../application/study/begin-foreign';
import { holdWatch } from '../../application/study/hold-watch';
import { markInHand } from '../../application/study/mark-in-hand';
import { missBreakPoint } from '../../application/study/miss-break-point';
import { noteInHand } from '../../application/study/note-in-hand';
import type { ExclusionCause } from '../../domain/study/exclusion-cause';
import type { StudyWatch } from '../../domain/study/study';
import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';

const words = study.observe;

interface Props {
  /** Null before the first tap. */
  readonly watch: StudyWatch | null;
  readonly isSnapback: boolean;
}

const OTHER_METHOD: ExclusionCause = 'method-not-followed';

/** What may happen beside the break points, each one tap; each says what it does before it is tapped. */
export function ObserveActions({ watch, isSnapback }: Props) {
  const { bench, isReadOnly } = useApp();
  if (watch?.aside && watch.aside.elementIndex === null) return <ForeignCodes note={watch.aside.note} />;
  const isOff = watch === null || watch.aside !== null || watch.isHeld || watch.isWaiting || isReadOnly;
  return (
    <>
      <TimingButton class="button study-action" disabled={isOff} onTap={(at) => beginForeign(bench, at)}>
        {words.foreign}
        <span class="study-action-what">{words.foreignWhat}</span>
      </TimingButton>
      <TimingButton class="button study-action" disabled={isOff} onTap={() => missBreakPoint(bench)}>
        {words.missed}
        <span class="study-action-what">{words.missedWhat}</span>
      </TimingButton>
      <TimingButton
        class="button study-action"
        pressed={watch?.note === words.fumbleNote}
        disabled={isOff}
        onTap={() => noteInHand(bench, watch?.note === words.fumbleNote ? '' : words.fumbleNote)}
      >
        {words.fumble}
        <span class="study-action-what">{words.fumbleWhat}</span>
      </TimingButton>
      <TimingButton
        class="button study-action"
        pressed={watch?.cause === OTHER_METHOD}
        disabled={isOff}
        onTap={() => markInHand(bench, OTHER_METHOD)}
      >
        {words.otherMethod}
        <span class="study-action-what">{words.otherMethodWhat}</span>
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

/** While a foreign element runs: a word for it, of a few. Any other word can be given on the sheet. */
function ForeignCodes({ note }: { note: string }) {
  const { bench, isReadOnly } = useApp();
  return words.foreignCodes.map((code) => (
    <TimingButton
      key={code}
      class="choice study-action"
      pressed={note === code}
      disabled={isReadOnly}
      onTap={() => noteInHand(bench, note === code ? '' : code)}
    >
      {code}
    </TimingButton>
  ));
}
