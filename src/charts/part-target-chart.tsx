import { ChartFrame } from './chart-frame';
import { linearScale, type Scale } from './linear-scale';
import { roundTicks } from './round-ticks';
import { fittedText, textWidth } from './text-width';
import { tickDecimals } from './tick-decimals';

/** One part beside its target; all amounts in the same unit. */
export interface PartLine {
  readonly key: string;
  readonly label: string;
  /** Small, under the label. */
  readonly note: string;
  readonly mean: number;
  /** Ends of the spread; null where there is none to draw. */
  readonly spread: { readonly low: number; readonly high: number } | null;
  /** The values themselves, where they are few enough to be seen one by one. */
  readonly dots: readonly number[];
  readonly target: { readonly value: number; readonly text: string } | null;
  /** At the right, in words: the position against the target. */
  readonly verdict: string;
  readonly side: 'faster' | 'slower' | 'level';
  /** Small, under the verdict. */
  readonly verdictNote: string;
}

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly lines: readonly PartLine[];
  readonly axisText: string;
  readonly tickText: (value: number, decimals: number) => string;
}

const ROW = 66;
const AXIS = 46;
const BAR = 24;
const TYPE = 18;
const SMALL = 15;
/** Heavy type runs wider. */
const BOLD = 1.08;

/** Place of the columns at this width: names, plot, verdicts. */
export function partTargetColumns(width: number): {
  label: number;
  from: number;
  to: number;
  verdict: number;
} {
  const label = width >= 1_000 ? 150 : 124;
  const verdict = width >= 1_000 ? 256 : 244;
  return { label, from: label + 12, to: width - verdict - 16, verdict: width - verdict };
}

/**
 * The parts of a day beside their targets: a bar to the mean, a line for the spread, a tall mark at the target.
 * It draws the numbers it is given and computes none.
 */
export function PartTargetChart({ id, title, description, width, lines, axisText, tickText }: Props) {
  const columns = partTargetColumns(width);
  const highest = Math.max(
    ...lines.flatMap(({ mean, spread, dots, target }) => [
      mean,
      spread?.high ?? 0,
      target?.value ?? 0,
      ...dots,
    ]),
    0,
  );
  const ticks = roundTicks(0, highest > 0 ? highest : 1, width >= 1_000 ? 8 : 6);
  const decimals = tickDecimals(ticks);
  const x = linearScale({ low: 0, high: ticks.at(-1)!, start: columns.from, end: columns.to });
  const bottom = lines.length * ROW;
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={bottom + AXIS}>
      {ticks.map((tick) => (
        <g key={tick}>
          <line x1={x(tick)} x2={x(tick)} y1={0} y2={bottom} stroke="var(--rule)" />
          <text x={x(tick)} y={bottom + 18} font-size={SMALL} text-anchor="middle" fill="var(--quiet)">
            {tickText(tick, decimals)}
          </text>
        </g>
      ))}
      <text x={columns.from} y={bottom + 40} font-size={SMALL} fill="var(--quiet)">
        {axisText}
      </text>
      {lines.map((line, place) => (
        <Line key={line.key} line={line} top={place * ROW} width={width} x={x} columns={columns} />
      ))}
      <line x1={columns.from} x2={columns.from} y1={0} y2={bottom} stroke="var(--ink)" stroke-width={1.5} />
    </ChartFrame>
  );
}

interface LineProps {
  readonly line: PartLine;
  readonly top: number;
  readonly width: number;
  readonly x: Scale;
  readonly columns: ReturnType<typeof partTargetColumns>;
}

function Line({ line, top, width, x, columns }: LineProps) {
  const { label, note, mean, spread, dots, target, verdict, side, verdictNote } = line;
  const middle = top + 40;
  return (
    <g>
      <line x1={0} x2={width} y1={top + ROW} y2={top + ROW} stroke="var(--rule)" />
      <text x={0} y={top + 32} font-size={TYPE} font-weight={600} fill="var(--ink)">
        {fittedText(label, columns.label, TYPE * BOLD)}
      </text>
      <text x={0} y={top + 52} font-size={SMALL} fill="var(--quiet)">
        {fittedText(note, columns.label, SMALL)}
      </text>
      {dots.length === 0 && (
        <rect
          x={x(0)}
          y={middle - BAR / 2}
          width={x(mean) - x(0)}
          height={BAR}
          fill="var(--shade)"
          stroke="var(--rule-strong)"
        />
      )}
      {spread && <Spread low={x(spread.low)} high={x(spread.high)} y={middle} />}
      <rect x={x(mean) - 2.5} y={middle - BAR / 2} width={5} height={BAR} fill="var(--ink)" />
      {dots.map((value, place) => (
        <circle
          key={`${place}`}
          cx={x(value)}
          cy={middle}
          r={5}
          fill="var(--sheet)"
          stroke="var(--ink)"
          stroke-width={2}
        />
      ))}
      {target && <Target at={x(target.value)} text={target.text} top={top} columns={columns} />}
      <text
        x={columns.verdict}
        y={top + 32}
        font-size={TYPE}
        font-weight={600}
        fill={side === 'faster' ? 'var(--ahead)' : side === 'slower' ? 'var(--behind)' : 'var(--ink)'}
      >
        {fittedText(verdict, width - columns.verdict, TYPE * BOLD)}
      </text>
      <text x={columns.verdict} y={top + 52} font-size={SMALL} fill="var(--quiet)">
        {fittedText(verdictNote, width - columns.verdict, SMALL)}
      </text>
    </g>
  );
}

function Spread({ low, high, y }: { low: number; high: number; y: number }) {
  return (
    <path
      d={`M${low} ${y - 6} V${y + 6} M${low} ${y} H${high} M${high} ${y - 6} V${y + 6}`}
      stroke="var(--ink)"
      stroke-width={1.5}
      fill="none"
    />
  );
}

/** The mark is taller than the bar and stands out of it, so that it is seen whichever of the two is longer. */
function Target({
  at,
  text,
  top,
  columns,
}: {
  at: number;
  text: string;
  top: number;
  columns: LineProps['columns'];
}) {
  const half = textWidth(text, SMALL) / 2;
  const middle = Math.min(Math.max(at, columns.from + half), columns.to - half);
  return (
    <g>
      <path d={`M${at - 6} ${top + 20} H${at + 6} L${at} ${top + 27} Z`} fill="var(--ink)" />
      <line x1={at} x2={at} y1={top + 20} y2={top + 60} stroke="var(--ink)" stroke-width={3} />
      <text x={middle} y={top + 15} font-size={SMALL} text-anchor="middle" fill="var(--ink)">
        {text}
      </text>
    </g>
  );
}
