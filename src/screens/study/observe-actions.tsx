import { beginForeign } from '../../application/study/begin-foreign';
import { beginOccasional } from '../../application/study/begin-occasional';
import { missBreakPoint } from '../../application/study/miss-break-point';
import { noteInHand } from '../../application/study/note-in-hand';
import type { ElementDefinition } from '../../domain/shop/element-definition';
import type { StudyWatch } from '../../domain/study/study';
import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';

const words = study.observe;

interface Props {
  readonly elements: readonly ElementDefinition[];
  /** Null before the first tap. */
  readonly watch: StudyWatch | null;
}

/** What may happen beside the break points, each one tap; each says what it does before it is tapped. */
export function ObserveActions({ elements, watch }: Props) {
  const { bench, isReadOnly } = useApp();
  if (watch?.aside && watch.aside.elementIndex === null) return <ForeignCodes note={watch.aside.note} />;
  const isOff = watch === null || watch.aside !== null || isReadOnly;
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
      {elements.map(
        ({ name, elementClass }, index) =>
          elementClass === 'occasional' && (
            <TimingButton
              key={index}
              class="button study-action"
              disabled={isOff}
              onTap={(at) => beginOccasional(bench, at, index + 1)}
            >
              {name}
              <span class="study-action-what">{words.occasionalWhat}</span>
            </TimingButton>
          ),
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
