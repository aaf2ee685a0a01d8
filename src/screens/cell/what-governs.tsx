import { decimalMinutes } from '../../i18n/decimal-time';
import { cellGoverns as says, cell as words } from '../../i18n/en/cell';
import { formatNumber } from '../../i18n/format-number';
import { ActivityPicture } from './activity-picture';
import { ElementGains } from './element-gains';
import { HowReckoned } from './how-reckoned';
import { NextAnswer } from './next-answer';
import type { PartProps } from './part-choice';
import { partName } from './part-name';
import { PartsTable } from './parts-table';
import { useGoodPerDay } from './present-run';
import { dayMsOf, type ReckonedPart, recordedDayMs } from './reckon-parts';
import { StudySource } from './study-source';
import type { CellData } from './use-cell';

/** What the cell should do next, in a sentence; then every part, and one of them in full. */
export function WhatGoverns({ cell, parts, part, choose }: PartProps & { cell: CellData }) {
  const goodPerDay = useGoodPerDay(cell, parts);
  const perDay = goodPerDay(part);
  return (
    <>
      <NextAnswer parts={parts} goodPerDay={goodPerDay} />
      <div>
        <PartsTable parts={parts} part={part} choose={choose} goodPerDay={goodPerDay} dayMs={dayMsOf(cell)} />
        <p class="small quiet">{says.tableNote}</p>
      </div>
      <section class="stack">
        <div>
          <h2>{detailOf(part)}</h2>
          <StudySource part={part} />
        </div>
        <MoreOf part={part} />
        <div class={part.source ? 'cell-sides cell-detail' : undefined}>
          {part.source && <ActivityPicture work={part.work} />}
          {perDay !== undefined && <ElementGains part={part} perDay={perDay} />}
        </div>
        {!part.source && <p class="quiet">{says.noChart}</p>}
      </section>
      <HowReckoned lines={[...says.howText, dayText(cell)]} />
    </>
  );
}

function dayText(cell: CellData): string {
  const hours = formatNumber(dayMsOf(cell) / 3_600_000, 2);
  return recordedDayMs(cell) === null ? says.assumedDay(hours) : says.day(hours, cell.history.days.days);
}

function detailOf(part: ReckonedPart): string {
  const { governs, cycles, machineCycles, hasMachine } = part.cycle;
  const name = partName(part);
  if (!part.source && hasMachine)
    return says.detail.mix(formatNumber((100 * (cycles - machineCycles)) / cycles));
  if (governs === 'other') return says.detail.other(name);
  if (!hasMachine) return says.detail.alone(name);
  return says.detail[governs](name, governs === 'hands' ? cycles - machineCycles : machineCycles, cycles);
}

/** What averages hide, and where a quicker pace ends; nothing where neither matters. */
function MoreOf({ part: { cycle, source } }: { part: ReckonedPart }) {
  const { tieLossMs, takeoverPct, governs } = cycle;
  // In a mix one part's machine does not wait for another part's hands.
  if (!source) return null;
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
