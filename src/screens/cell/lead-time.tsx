import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { useApp } from '../app';
import { CellSettingsForm } from './cell-settings-form';
import { HowReckoned } from './how-reckoned';
import { LeadTimeFigures } from './lead-time-figures';
import { LeadTimeStack } from './lead-time-stack';
import { LotTaps } from './lot-taps';
import { LotWays } from './lot-ways';
import { LotsInside } from './lots-inside';
import { PartChoice } from './part-choice';
import type { ReckonedPart } from './reckon-parts';
import type { CellData } from './use-cell';

interface Props {
  readonly cell: CellData;
  readonly parts: readonly ReckonedPart[];
  /** Null while no study tells of any part. */
  readonly part: ReckonedPart | null;
  readonly choose: (key: string) => void;
}

/** Lots that come and go, how long parts are inside, and what lots and trolleys do to it. */
export function LeadTime({ cell, parts, part, choose }: Props) {
  const { isReadOnly } = useApp();
  const { lots } = cell.history;
  return (
    <>
      <LeadTimeFigures cell={cell}>{!isReadOnly && <LotTaps cell={cell} />}</LeadTimeFigures>
      <LotsInside lots={lots} />
      {part && (
        <>
          <section class="stack">
            <h2>{says.stack}</h2>
            <PartChoice parts={parts} part={part} choose={choose} />
            <LeadTimeStack cell={cell} part={part} />
          </section>
          <LotWays cell={cell} part={part} />
        </>
      )}
      {!isReadOnly && <CellSettingsForm cell={cell} parts={parts} />}
      <HowReckoned lines={says.how} />
    </>
  );
}
