import { useMemo } from 'preact/hooks';
import { ENOUGH_CYCLES } from '../../domain/cell/cycle-precision';
import { type NextStep, nextStep, type PaysOn } from '../../domain/cell/next-step';
import type { WorkKindOfCell } from '../../domain/cell/second-out';
import { cellGoverns as says, cell as words } from '../../i18n/en/cell';
import { formatNumber } from '../../i18n/format-number';
import { partName } from './part-name';
import type { ReckonedPart } from './reckon-parts';

interface Props {
  readonly parts: readonly ReckonedPart[];
  /** Good parts a day; undefined while they are being simulated. */
  readonly goodPerDay: (part: ReckonedPart) => number | undefined;
}

/** What the cell should do next, in a sentence, and on which parts each kind of work pays; then, why to begin there. */
export function NextAnswer({ parts, goodPerDay }: Props) {
  const single = parts.filter(({ source }) => source);
  const mix = parts.find(({ source }) => !source);
  const step = useMemo(() => nextStep(single, mix), [parts]);
  if (!step) return <TooEarly parts={single} />;
  const told = single.filter(({ partCode }) => step.parts.includes(partCode));
  const isEqual = !mix && told.length > 1;
  const perDay = evenly((mix ? [mix] : told).map(goodPerDay));
  const hasMachine = told.some(({ cycle }) => cycle.hasMachine);
  const hasOther = told.some(({ seconds }) => seconds.other);
  const kinds: readonly WorkKindOfCell[] = hasMachine ? ['outside', 'inside', 'machine'] : ['outside'];
  const asked = hasOther ? [...kinds, 'other' as const] : kinds;
  const inOrder = [step.kind, ...asked.filter((kind) => kind !== step.kind)];
  const isAlone = !hasMachine && !hasOther;
  // Of a standing machine nothing is said to parts that have none.
  const nameOf = (kind: WorkKindOfCell, isBeside: boolean) =>
    kind === 'outside' && !isBeside ? 'hands' : kind;
  const isBesideAll = told.every(({ cycle }) => cycle.hasMachine);
  return (
    <section class="stack cell-answer" aria-live="polite">
      <h1>{says.next[nameOf(step.kind, !step.isWithoutMachine)](step.first.name)}</h1>
      {!isAlone && (
        <p>
          {inOrder.map(
            (kind) =>
              `${says.pays[nameOf(kind, isBesideAll)]} ${where(step.pays[kind], step.parts.length)}. `,
          )}
        </p>
      )}
      <WhyFirst step={step} perDay={perDay} />
      {isEqual && <p class="small quiet">{says.equalMix}</p>}
    </section>
  );
}

/** Good parts of a day in which as many are made of each. */
const evenly = (all: readonly (number | undefined)[]) =>
  all.length / all.reduce<number>((sum, own) => sum + 1 / (own ?? Number.NaN), 0);

/** Why that element is the first, by the measure of the table, and which one another measure would begin with. */
function WhyFirst({ step, perDay }: { step: NextStep; perDay: number }) {
  const { first, mostByTenth: other, isMostBySecond } = step;
  const parts = (share: number) => (Number.isNaN(perDay) ? '…' : formatNumber(share * perDay, 1));
  const begin = (isMostBySecond ? says.why.most : says.why.ofItsKind)(first.name, parts(first.bySecond));
  const byTenth =
    first.name === other.name
      ? says.why.byTenthToo(parts(first.byTenth))
      : says.why.byTenth({
          name: other.name,
          tenth: parts(other.byTenth),
          second: parts(other.bySecond),
          firstTenth: parts(first.byTenth),
        });
  return (
    <p>
      {begin} {byTenth}
    </p>
  );
}

/** In full here, in part there, not elsewhere: by the figures of the table. */
function where({ fully, partly, not }: PaysOn, all: number): string {
  if (fully.length === all) return says.onEvery;
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
