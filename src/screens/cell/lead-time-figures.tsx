import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { Histogram } from '../../charts/histogram';
import { roundTicks } from '../../charts/round-ticks';
import { countsBetween } from '../../domain/cell/counts-between';
import { leadTimes } from '../../domain/cell/lead-times';
import { workingClock } from '../../domain/cell/working-time';
import { cell as words } from '../../i18n/en/cell';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { formatNumber } from '../../i18n/format-number';
import { useWidth } from '../review/use-width';
import { FigureRow } from './figure-row';
import type { CellData } from './use-cell';

interface Props {
  readonly cell: CellData;
  readonly valueAdding: {
    readonly code: string;
    readonly names: readonly string[];
    readonly ms: number;
    readonly shareOf: (leadTimeMs: number) => number | null;
  } | null;
  /** What stands between the sentence and the figures. */
  readonly children: ComponentChildren;
}

const clocks = ['working', 'wall'] as const;
const minutes = (ms: number, digits = 0) => formatNumber(ms / 60_000, digits);

/** How long parts were in the cell: a sentence, the distribution, and whether the records hold together. */
export function LeadTimeFigures({ cell, valueAdding, children }: Props) {
  const { lots, working } = cell.history;
  const [clock, setClock] = useState<(typeof clocks)[number]>('working');
  const { ref, width } = useWidth();
  const times = useMemo(
    () => leadTimes(lots, clock === 'working' ? workingClock(working) : (wallMs) => wallMs),
    [lots, working, clock],
  );
  if (!times) {
    return (
      <>
        <div class="cell-answer">
          <h1>{says.none}</h1>
        </div>
        {children}
      </>
    );
  }
  const { timesMs, meanMs, medianMs, p80Ms, p90Ms, longestMs, meanInside, insideByLittle } = times;
  const edges = roundTicks(0, Math.max(1, longestMs / 60_000), 24);
  const isOff = Math.abs(meanInside - insideByLittle) > 0.01 * insideByLittle;
  const figures = [
    [says.figures.n, formatNumber(timesMs.length)],
    [says.figures.mean, minutes(meanMs, 1)],
    [says.figures.median, minutes(medianMs, 1)],
    [says.figures.p80, minutes(p80Ms, 1)],
    [says.figures.p90, minutes(p90Ms, 1)],
    [says.figures.longest, minutes(longestMs, 1)],
  ] as const;
  const title = says.title(words.minutes(minutes(meanMs)), words.minutes(minutes(p90Ms)));
  return (
    <section class="stack">
      <div class="cell-answer">
        <h1>{title}</h1>
      </div>
      {children}
      <fieldset class="choices">
        <legend class="visually-hidden">{says.clock}</legend>
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
            tickText={(value) => formatNumber(value)}
          />
        )}
      </div>
      <FigureRow figures={figures} />
      {valueAdding && <Efficiency {...valueAdding} leadTimeMs={meanMs} />}
      <p class="small quiet">
        {says.little(formatNumber(meanInside, 1), formatNumber(insideByLittle, 1))} {isOff && says.littleOff}{' '}
        {lots.unseen > 0 && says.unseen(says.parts(lots.unseen))}
      </p>
    </section>
  );
}

function Efficiency({
  code,
  names,
  ms,
  shareOf,
  leadTimeMs,
}: NonNullable<Props['valueAdding']> & { leadTimeMs: number }) {
  if (names.length === 0) return <p>{says.pceNone}</p>;
  const share = shareOf(leadTimeMs);
  if (share === null) return <p>{says.pceWrong}</p>;
  return (
    <p>
      {says.pce(`${formatNumber(100 * share, 1)} %`, code, words.list(names), words.minutes(minutes(ms, 2)))}
    </p>
  );
}
