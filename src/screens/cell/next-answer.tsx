import { ENOUGH_CYCLES } from '../../domain/cell/cycle-precision';
import type { WorkKindOfCell } from '../../domain/cell/element-effects';
import { nextStep, type PaysOn } from '../../domain/cell/next-step';
import { cellGoverns as says, cell as words } from '../../i18n/en/cell';
import { partName } from './part-name';
import type { ReckonedPart } from './reckon-parts';

/** What the cell should do next, in a sentence, and on which parts each kind of work pays. */
export function NextAnswer({ parts }: { parts: readonly ReckonedPart[] }) {
  const single = parts.filter(({ source }) => source);
  const step = nextStep(single);
  if (!step) return <TooEarly parts={single} />;
  const hasMachine = single.some(({ cycle }) => cycle.hasMachine);
  const hasOther = single.some(({ seconds }) => seconds.other);
  const kinds: readonly WorkKindOfCell[] = hasMachine ? ['outside', 'inside', 'machine'] : ['outside'];
  const told = hasOther ? [...kinds, 'other' as const] : kinds;
  const inOrder = [step.kind, ...told.filter((kind) => kind !== step.kind)];
  const isAlone = !hasMachine && !hasOther;
  return (
    <section class="stack cell-answer" aria-live="polite">
      <h1>{says.next[isAlone ? 'hands' : step.kind](step.element)}</h1>
      {!isAlone && (
        <p>
          {inOrder.map((kind) => `${says.pays[hasMachine ? kind : 'hands']} ${where(step.pays[kind])}. `)}
        </p>
      )}
    </section>
  );
}

/** In full here, in part there, not elsewhere: by the figures of the table. */
function where({ fully, partly, not }: PaysOn): string {
  if (partly.length + not.length === 0) return says.onEvery;
  if (fully.length + partly.length === 0) return says.onNone;
  const told = [
    ...(fully.length > 0 ? [says.fully(words.list(fully.map(codeOf)))] : []),
    ...(partly.length > 0 ? [says.partly(words.list(partly.map(codeOf)))] : []),
    ...(not.length > 0 ? [says.notOn(words.list(not.map(codeOf)))] : []),
  ];
  return told.join(', ');
}

const codeOf = (code: string) => code || words.noCode;

function TooEarly({ parts }: { parts: readonly ReckonedPart[] }) {
  return (
    <section class="stack cell-answer" aria-live="polite">
      <h1>{says.tooEarly}</h1>
      <p>
        {parts.map((part) => `${says.hasCycles(partName(part), part.wholeCycles)} `)}
        {says.needed(ENOUGH_CYCLES)}
      </p>
    </section>
  );
}
