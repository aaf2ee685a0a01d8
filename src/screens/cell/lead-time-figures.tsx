import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { Histogram } from '../../charts/histogram';
import { roundTicks } from '../../charts/round-ticks';
import { countsBetween } from '../../domain/cell/counts-between';
import type { CellLots } from '../../domain/cell/fold-lots';
import { type LeadTimes, leadTimes } from '../../domain/cell/lead-times';
import { type WorkingSpan, workingClock } from '../../domain/cell/working-time';
import { cell as words } from '../../i18n/en/cell';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { formatNumber } from '../../i18n/format-number';
import { useWidth } from '../review/use-width';
import { FigureRow } from './figure-row';
import type { CellData } from './use-cell';

interface Props {
  readonly cell: CellData;
  /** What stands between the sentence and the figures. */
  readonly children: ComponentChildren;
}

const clocks = ['working', 'wall'] as const;
type Clock = (typeof clocks)[number];
const minutes = (ms: number, digits = 0) => formatNumber(ms / 60_000, digits);
const min = (ms: number) => words.minutes(minutes(ms));

/** How long parts were in the cell: a sentence, the distribution, and whether the records hold together. */
export function LeadTimeFigures({ cell, children }: Props) {
  const { lots, working } = cell.history;
  const [wanted, setClock] = useState<Clock>('working');
  const { times, isWorkKnown, clock } = useMemo(
    () => timesBy(wanted, lots, working),
    [wanted, lots, working],
  );
  const title = times ? titleOf(times) : says.none;
  return (
    <section class="stack">
      <div class="cell-answer stack">
        <h1>{title}</h1>
        {times && !isWorkKnown && <p>{says.noTurns}</p>}
        {times && times.overnight > 0 && (
          <p>{says.overnight(says.parts(times.overnight), formatNumber(times.timesMs.length))}</p>
        )}
      </div>
      {children}
      {times && isWorkKnown && (
        <fieldset class="choices">
          <legend>{says.clock}</legend>
          {clocks.map((name) => (
            <button
              key={name}
              type="button"
              class="choice"
              aria-pressed={name === clock}
              onClick={() => setClock(name)}
            >
              {says.clocks[name]}
            </button>
          ))}
        </fieldset>
      )}
      {times && <Distribution times={times} title={title} />}
      {times && <RecordsCheck times={times} unseen={lots.unseen} />}
      {!times && lots.unseen > 0 && <p class="small quiet">{says.unseen(says.parts(lots.unseen))}</p>}
    </section>
  );
}

/** By the clock that was chosen; without turns around the lots nobody knows when the cell worked. */
function timesBy(wanted: Clock, lots: CellLots, working: readonly WorkingSpan[]) {
  const worked = workingClock(working);
  const byWork = leadTimes(lots, worked);
  const isWorkKnown = byWork !== null && byWork.longestMs > 0;
  const clock = isWorkKnown ? wanted : 'wall';
  const wall = (wallMs: number) => wallMs;
  const times = clock === 'working' ? byWork : leadTimes(lots, wall, isWorkKnown ? worked : wall);
  return { times, isWorkKnown, clock };
}

function titleOf({ isEnough, medianMs, p90Ms, timesMs, meanMs }: LeadTimes): string {
  return isEnough
    ? says.title(min(medianMs), min(p90Ms))
    : says.titleFew(says.parts(timesMs.length), min(meanMs));
}

function Distribution({ times, title }: { times: LeadTimes; title: string }) {
  const { ref, width } = useWidth();
  const { timesMs, meanMs, longestMs, isEnough, medianMs, p80Ms, p90Ms } = times;
  const edges = roundTicks(0, Math.max(1, longestMs / 60_000), 24);
  const figures = [
    [says.figures.n, formatNumber(timesMs.length)] as const,
    ...(isEnough
      ? ([
          [says.figures.median, minutes(medianMs, 1)],
          [says.figures.p80, minutes(p80Ms, 1)],
          [says.figures.p90, minutes(p90Ms, 1)],
        ] as const)
      : []),
    [says.figures.longest, minutes(longestMs, 1)] as const,
    [says.figures.mean, minutes(meanMs, 1)] as const,
  ];
  return (
    <>
      {isEnough && (
        <div ref={ref}>
          {width > 0 && (
            <Histogram
              id="cell-lead-times"
              title={says.chart}
              description={title}
              width={width}
              height={190}
              edges={edges}
              counts={countsBetween(
                timesMs.map((ms) => ms / 60_000),
                edges,
              )}
              marks={[
                { at: medianMs / 60_000, text: `${says.figures.median} ${minutes(medianMs)}` },
                { at: p90Ms / 60_000, text: `${says.figures.p90} ${minutes(p90Ms)}` },
              ]}
              tickText={formatNumber}
            />
          )}
        </div>
      )}
      <FigureRow figures={figures} />
    </>
  );
}

function RecordsCheck({ times, unseen }: { times: LeadTimes; unseen: number }) {
  const { meanInside, insideByLittle } = times;
  const isOff = Math.abs(meanInside - insideByLittle) > 0.01 * insideByLittle;
  return (
    <p class="small quiet">
      {says.little(formatNumber(meanInside, 1), formatNumber(insideByLittle, 1))} {isOff && says.littleOff}{' '}
      {unseen > 0 && says.unseen(says.parts(unseen))}
    </p>
  );
}
