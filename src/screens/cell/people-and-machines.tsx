import { useState } from 'preact/hooks';
import { setCell } from '../../application/cell/cell-settings';
import { balanceWork, type WorkBalance } from '../../domain/cell/balance-work';
import { taktLeftMs } from '../../domain/cell/takt-left';
import { decimalMinutes } from '../../i18n/decimal-time';
import { cell as words } from '../../i18n/en/cell';
import { cellPeople as says } from '../../i18n/en/cell-people';
import { formatNumber } from '../../i18n/format-number';
import { useApp } from '../app';
import { CellSettingsForm } from './cell-settings-form';
import { HowReckoned } from './how-reckoned';
import { MoreMachines } from './more-machines';
import { NumberField } from './number-field';
import { PartChoice, type PartProps } from './part-choice';
import { presentRun } from './present-run';
import { dayMsOf, type ReckonedPart } from './reckon-parts';
import { TaskOrder } from './task-order';
import type { CellData } from './use-cell';
import { WorkShared } from './work-shared';

const min = (ms: number) => words.minutes(decimalMinutes(ms, 3));

/** How many people what is wanted needs and what each does; then, how many machines one of them can serve. */
export function PeopleAndMachines({ cell, parts, part, choose }: PartProps & { cell: CellData }) {
  const { bench, isReadOnly } = useApp();
  const { settings, history } = cell;
  const { partsPerDay } = settings;
  const dayMs = dayMsOf(cell);
  const hands = part.work.elements.filter(({ place }) => place !== 'machine');
  const [after, setAfter] = useState<Readonly<Record<string, readonly string[]>>>(() =>
    Object.fromEntries(hands.map(({ name }, place) => [name, place > 0 ? [hands[place - 1]!.name] : []])),
  );
  const { externalMs, internalMs, occasionalMs } = part.cycle;
  const reworkMs = externalMs + internalMs;
  const leftMs =
    partsPerDay === null
      ? null
      : taktLeftMs({ dayMs, partsPerDay, occasionalMs, reworkMs, days: history.days });
  const shared = leftMs !== null && leftMs > 0 ? balanceWork(part.work, leftMs, after) : null;
  return (
    <>
      <PartChoice parts={parts} part={part} choose={choose} />
      <section class="stack">
        <Answer cell={cell} part={part} leftMs={leftMs} shared={shared} />
        <NumberField
          label={says.demand}
          value={partsPerDay ?? 0}
          isWhole
          disabled={isReadOnly}
          change={(wanted) => setCell(bench, { ...settings, partsPerDay: wanted > 0 ? wanted : null })}
        />
        {shared?.ok && leftMs !== null && <WorkShared shared={shared} leftMs={leftMs} part={part} />}
        {shared && !shared.ok && <p role="status">{says.loop(words.list(shared.loop))}</p>}
        {leftMs !== null && partsPerDay !== null && (
          <p class="quiet">{says.left(min(dayMs / partsPerDay), min(Math.max(0, leftMs)))}</p>
        )}
        {partsPerDay !== null && (
          <TaskOrder names={hands.map(({ name }) => name)} after={after} change={setAfter} />
        )}
      </section>
      <MoreMachines cell={cell} part={part} />
      {!isReadOnly && <CellSettingsForm cell={cell} parts={parts} />}
      <HowReckoned lines={says.how} />
    </>
  );
}

interface AnswerProps {
  readonly cell: CellData;
  readonly part: ReckonedPart;
  /** Of the takt, for this work; null while nobody said what is wanted. */
  readonly leftMs: number | null;
  readonly shared: WorkBalance | null;
}

/** What is made of what is wanted; and where that is too little, what would do. */
function Answer({ cell, part, leftMs, shared }: AnswerProps) {
  const { partsPerDay } = cell.settings;
  if (partsPerDay === null || leftMs === null) {
    return (
      <div class="cell-answer">
        <h1>{says.noTakt}</h1>
      </div>
    );
  }
  const good = presentRun(cell, part).summary.meanGood;
  const people = says.people(part.cycle.otherMs > 0 ? 2 : 1);
  const isEnough = Number(good.toFixed(1)) >= partsPerDay;
  const made = [people, formatNumber(good, 1), formatNumber(partsPerDay)] as const;
  return (
    <div class="cell-answer stack">
      <h1>{isEnough ? says.enough(...made) : says.tooFew(...made)}</h1>
      {!isEnough && shared?.ok !== false && <p>{whatWouldDo(part, leftMs, shared)}</p>}
    </div>
  );
}

function whatWouldDo(
  { cycle }: ReckonedPart,
  leftMs: number,
  shared: Extract<WorkBalance, { ok: true }> | null,
): string {
  const { externalMs, machineMs, hasMachine, cycleMs } = cycle;
  if (leftMs <= 0) return says.nothingLeft;
  const machinePathMs = externalMs + machineMs;
  if (hasMachine && machinePathMs > leftMs) {
    const machines = says.machinesCount(Math.ceil(machinePathMs / leftMs));
    const people = shared && shared.tooLong.length === 0 ? says.people(shared.stations.length) : null;
    const slow = says.machineSlow(min(machinePathMs), min(leftMs));
    return people ? `${slow} ${says.itTakes(machines, people)}` : slow;
  }
  if (!shared) return says.noHands;
  if (shared.tooLong.length > 0) return says.tooLong(min(leftMs), shared.tooLong);
  const { length } = shared.stations;
  if (length === 1) return cycleMs > leftMs ? says.tieSlow(min(cycleMs), min(leftMs)) : says.close;
  return says.wouldDo(says.people(length));
}
