import { AmountBar } from '../../charts/amount-bar';
import { nextStep } from '../../domain/cell/next-step';
import { cellGoverns as says, cell as words } from '../../i18n/en/cell';
import { decimalMinutes } from '../../i18n/format-duration';
import { formatNumber } from '../../i18n/format-number';
import { ActivityPicture } from './activity-picture';
import { HowReckoned } from './how-reckoned';
import type { PartProps } from './part-choice';
import { PartsTable } from './parts-table';
import { dayMsOf, type ReckonedPart, recordedDayMs } from './reckon-parts';
import type { CellData } from './use-cell';

/** What the cell should do next, in a sentence; then every part, and one of them in full. */
export function WhatGoverns({ cell, parts, part, choose }: PartProps & { cell: CellData }) {
  const step = nextStep(parts)!;
  const hasMachine = parts.some(({ cycle }) => cycle.hasMachine);
  const dayMs = dayMsOf(cell);
  const machineSays =
    step.machineOn.length > 0 ? says.machineOn(words.list(step.machineOn)) : says.machineNowhere;
  return (
    <>
      <section class="stack cell-answer" aria-live="polite">
        <h1>{says.next[hasMachine ? step.kind : 'hands'](step.element)}</h1>
        <p>
          {step.paysOn.length === parts.length ? says.paysOnAll : says.paysOn(words.list(step.paysOn))}{' '}
          {hasMachine && step.kind !== 'machine' && machineSays}{' '}
          {step.tieOn.length > 0 && says.tieOn(words.list(step.tieOn))}
        </p>
      </section>
      <PartsTable parts={parts} part={part} choose={choose} dayMs={dayMs} />
      <section class="stack">
        <h2>{detailOf(part)}</h2>
        <MoreOf part={part} />
        <div class="cell-sides">
          <ActivityPicture part={part} />
          <Effects part={part} dayMs={dayMs} />
        </div>
      </section>
      <HowReckoned lines={[...says.howText, dayText(cell, dayMs)]} />
    </>
  );
}

function dayText(cell: CellData, dayMs: number): string {
  const hours = formatNumber(dayMs / 3_600_000, 2);
  return recordedDayMs(cell) === null ? says.assumedDay(hours) : says.day(hours, cell.history.days.days);
}

function detailOf({ partCode, cycle }: ReckonedPart): string {
  const { governs, cycles, machineCycles, hasMachine } = cycle;
  const code = partCode || words.noCode;
  if (governs === 'other') return says.detail.other(code);
  if (!hasMachine) return says.detail.alone(code);
  return says.detail[governs](code, governs === 'hands' ? cycles - machineCycles : machineCycles, cycles);
}

/** What averages hide, and where a quicker pace ends; nothing where neither matters. */
function MoreOf({ part: { cycle } }: { part: ReckonedPart }) {
  const { tieLossMs, takeoverPct, governs } = cycle;
  const isLoss = tieLossMs > 0.01 * cycle.partMs;
  const isNear = governs === 'hands' && takeoverPct !== null && takeoverPct < 150;
  if (!isLoss && !isNear) return null;
  return (
    <p>
      {isLoss && says.tieLoss(words.minutes(decimalMinutes(tieLossMs, 3)))}{' '}
      {isNear && says.takeover(formatNumber(takeoverPct))}
    </p>
  );
}

function Effects({ part, dayMs }: { part: ReckonedPart; dayMs: number }) {
  const perDay = dayMs / part.cycle.partMs;
  const most = Math.max(...part.effects.map(({ gain }) => gain));
  return (
    <table class="sheet cell-effects">
      <caption>{says.effects}</caption>
      <thead>
        <tr>
          <th scope="col">{says.element}</th>
          <th scope="col" colSpan={2}>
            {says.more}
          </th>
        </tr>
      </thead>
      <tbody>
        {part.effects.map(({ name, gain }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{gain * perDay < 0.005 ? says.none : `+${formatNumber(gain * perDay, 2)}`}</td>
            <td class="cell-bar">
              <AmountBar amount={gain} most={most} width={110} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
