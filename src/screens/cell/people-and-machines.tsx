import { useState } from 'preact/hooks';
import { BalanceBars } from '../../charts/balance-bars';
import { balanceWork, type WorkBalance } from '../../domain/cell/balance-work';
import { cell as words } from '../../i18n/en/cell';
import { cellPeople as says } from '../../i18n/en/cell-people';
import { decimalMinutes } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';
import { useApp } from '../app';
import { useWidth } from '../review/use-width';
import { CellSettingsForm } from './cell-settings-form';
import { FigureRow } from './figure-row';
import { HowReckoned } from './how-reckoned';
import { MoreMachines } from './more-machines';
import { PartChoice, type PartProps } from './part-choice';
import { dayMsOf, type ReckonedPart } from './reckon-parts';
import { TaskOrder } from './task-order';
import type { CellData } from './use-cell';

const min = (ms: number) => words.minutes(decimalMinutes(ms, 3));

/** How many people the takt needs and what each does; then, how many machines one of them can serve. */
export function PeopleAndMachines({ cell, parts, part, choose }: PartProps & { cell: CellData }) {
  const { isReadOnly } = useApp();
  const { partsPerDay } = cell.settings;
  const taktMs = partsPerDay === null ? null : dayMsOf(cell) / partsPerDay;
  const hands = part.work.elements.filter(({ place }) => place !== 'machine');
  const [after, setAfter] = useState<Readonly<Record<string, readonly string[]>>>(() =>
    Object.fromEntries(hands.map(({ name }, place) => [name, place > 0 ? [hands[place - 1]!.name] : []])),
  );
  const shared = taktMs === null ? null : balanceWork(part.work, taktMs, after);
  const machinePathMs = part.cycle.externalMs + part.cycle.machineMs;
  const isMachineSlow = shared?.ok && taktMs !== null && part.cycle.hasMachine && machinePathMs > taktMs;
  return (
    <>
      <PartChoice parts={parts} part={part} choose={choose} />
      <section class="stack">
        <div class="cell-answer stack">
          <h1>
            {isMachineSlow ? says.machineSlow(min(machinePathMs), min(taktMs)) : answerOf(shared, taktMs)}
          </h1>
        </div>
        {shared?.ok && taktMs !== null && <Balance shared={shared} taktMs={taktMs} part={part} />}
        {taktMs !== null && (
          <TaskOrder names={hands.map(({ name }) => name)} after={after} change={setAfter} />
        )}
      </section>
      <MoreMachines part={part} />
      {!isReadOnly && <CellSettingsForm cell={cell} parts={parts} />}
      <HowReckoned lines={says.how} />
    </>
  );
}

function answerOf(shared: WorkBalance | null, taktMs: number | null): string {
  if (taktMs === null) return says.noTakt;
  if (!shared) return says.noHands;
  if (!shared.ok) return says.loop(words.list(shared.loop));
  if (shared.tooLong.length > 0) return says.notEnough(min(taktMs), words.list(shared.tooLong));
  return says.enough(says.people(shared.stations.length), min(taktMs));
}

interface BalanceProps {
  readonly shared: Extract<WorkBalance, { ok: true }>;
  readonly taktMs: number;
  readonly part: ReckonedPart;
}

function Balance({ shared: { stations, balance }, taktMs, part }: BalanceProps) {
  const { ref, width } = useWidth();
  const bars = stations.map(({ elements, p80Ms }, place) => ({
    title: says.person(place + 1),
    pieces: elements.map(({ name, meanMs }) => ({ name, amount: meanMs / 60_000 })),
    p80: p80Ms / 60_000,
    isMachine: false,
  }));
  const machine = part.work.elements.filter(({ place }) => place === 'machine');
  if (machine.length > 0) {
    const pieces = machine.map(({ name, meanMs }) => ({ name, amount: meanMs / 60_000 }));
    bars.push({ title: says.machine, pieces, p80: part.cycle.machineMs / 60_000, isMachine: true });
  }
  const percent = (share: number) => `${formatNumber(100 * share, 1)} %`;
  const figures = [
    [says.figures.minimum, formatNumber(balance.minimumStations)],
    [says.figures.efficiencyTakt, percent(balance.efficiencyByTakt)],
    [says.figures.delayTakt, percent(balance.delayByTakt)],
    [says.figures.efficiencyLongest, percent(balance.efficiencyByLongest)],
    [says.figures.delayLongest, percent(balance.delayByLongest)],
  ] as const;
  return (
    <>
      <div ref={ref}>
        {width > 0 && (
          <BalanceBars
            id="cell-balance"
            title={says.chart}
            description={stations
              .map(({ totalMs }, place) => says.barSays(says.person(place + 1), min(totalMs)))
              .join(' ')}
            width={width}
            bars={bars.map((bar) => (bar.isMachine ? { ...bar, p80: null } : bar))}
            takt={{ at: taktMs / 60_000, text: says.takt(min(taktMs)) }}
            p80Text={says.p80}
            tickText={(value) => formatNumber(value, 2)}
          />
        )}
      </div>
      <FigureRow figures={figures} />
    </>
  );
}
