import { ChartFrame } from './chart-frame';
import { linearScale, type Scale } from './linear-scale';
import { roundTicks } from './round-ticks';
import { fittedText, textWidth } from './text-width';

export interface CombinationLine {
  readonly number: string;
  readonly name: string;
  /** Under the head of its own kind of work; the other two stay empty. */
  readonly times: readonly [manual: string, automatic: string, walking: string];
  readonly bars: readonly {
    readonly kind: 'manual' | 'walking' | 'automatic' | 'waiting';
    readonly from: number;
    readonly to: number;
  }[];
}

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly lines: readonly CombinationLine[];
  /** In the unit of the bars. */
  readonly cycle: number;
  readonly cycleText: string;
  /** Time wanted a part; null where nobody said. */
  readonly takt: { readonly value: number; readonly text: string } | null;
  readonly heads: readonly [number: string, step: string, manual: string, automatic: string, walking: string];
  readonly totals: readonly [name: string, manual: string, automatic: string, walking: string];
  readonly tickText: (value: number) => string;
}

const HEAD = 54;
const ROW = 30;
const FOOT = 36;
const SMALL = 14;

/**
 * The standardized work combination table: steps down, time to the right; manual work a solid line, the machine's
 * run dashed, walking wavy, waiting a line with an arrow at both ends. It draws the times it is given.
 */
export function CombinationChart(props: Props) {
  const { id, title, description, width, lines, cycle, cycleText, takt, heads, totals, tickText } = props;
  // As wide as the longest name wants it, up to a third.
  const wanted = lines.map(({ name }) => textWidth(name, SMALL) + 8);
  const names = Math.min(width / 3, Math.max(width > 900 ? 240 : 200, ...wanted));
  const left = 34 + names;
  const column = Math.max(64, ...totals.slice(1).map((time) => textWidth(time, SMALL) + 12));
  // Figures of the first tick stand in its middle, clear of the last head.
  const plot = left + 3 * column + 30;
  const end = Math.max(cycle, takt?.value ?? 0);
  if (!(end > 0)) return null;
  const x = linearScale({ low: 0, high: end, start: plot, end: width - 24 });
  const bottom = HEAD + lines.length * ROW;
  const ticks = roundTicks(0, end, width > 900 ? 10 : 6).filter((tick) => tick <= end);
  const columns = [0, 1, 2].map((place) => left + (place + 1) * column - 6);
  const text = (at: { x: number; y: number }, words: string, anchor = 'start', weight = 400) => (
    <text x={at.x} y={at.y} font-size={SMALL} text-anchor={anchor} font-weight={weight} fill="var(--ink)">
      {words}
    </text>
  );
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={bottom + FOOT}>
      {text({ x: 0, y: HEAD - 14 }, heads[0], 'start', 600)}
      {text({ x: 34, y: HEAD - 14 }, heads[1], 'start', 600)}
      {columns.map((right, place) => text({ x: right, y: HEAD - 14 }, heads[place + 2]!, 'end', 600))}
      {ticks.map((tick) => (
        <g key={tick}>
          <line x1={x(tick)} x2={x(tick)} y1={HEAD - 8} y2={bottom} stroke="var(--rule)" />
          {text({ x: x(tick), y: HEAD - 14 }, tickText(tick), 'middle')}
        </g>
      ))}
      {lines.map(({ number, name, times, bars }, place) => {
        const y = HEAD + place * ROW;
        return (
          <g key={number}>
            <line x1="0" x2={width} y1={y + ROW} y2={y + ROW} stroke="var(--rule)" />
            {text({ x: 0, y: y + 20 }, number)}
            {text({ x: 34, y: y + 20 }, fittedText(name, names - 8, SMALL))}
            {columns.map((right, kind) => text({ x: right, y: y + 20 }, times[kind]!, 'end'))}
            {bars.map((bar) => (
              <Bar key={`${bar.kind} ${bar.from}`} {...bar} x={x} y={y + ROW / 2} />
            ))}
          </g>
        );
      })}
      <line
        x1={x(cycle)}
        x2={x(cycle)}
        y1={HEAD - 8}
        y2={bottom + 8}
        stroke="var(--ink)"
        stroke-width="2.5"
      />
      {text({ x: x(cycle) - 4, y: bottom + 24 }, cycleText, 'end', 600)}
      {takt && (
        <g>
          <line
            x1={x(takt.value)}
            x2={x(takt.value)}
            y1={HEAD - 8}
            y2={bottom + 8}
            stroke="var(--ink)"
            stroke-width="1.5"
            stroke-dasharray="2 4"
          />
          {text({ x: Math.min(x(takt.value), width - 4), y: 16 }, takt.text, 'end', 600)}
        </g>
      )}
      {text({ x: 34, y: bottom + 24 }, totals[0], 'start', 600)}
      {columns.map((right, kind) => text({ x: right, y: bottom + 24 }, totals[kind + 1]!, 'end', 600))}
    </ChartFrame>
  );
}

function Bar({ kind, from, to, x, y }: CombinationLine['bars'][number] & { x: Scale; y: number }) {
  const start = x(from);
  const end = x(to);
  if (kind === 'walking')
    return <path d={wave(start, end, y)} fill="none" stroke="var(--ink)" stroke-width="2.5" />;
  if (kind === 'waiting') {
    const head = Math.min(6, (end - start) / 2);
    const heads = `M${start + head},${y - head} L${start},${y} L${start + head},${y + head} M${end - head},${y - head} L${end},${y} L${end - head},${y + head}`;
    return <path d={`M${start},${y} H${end} ${heads}`} fill="none" stroke="var(--ink)" stroke-width="1.5" />;
  }
  return (
    <line
      x1={start}
      x2={end}
      y1={y}
      y2={y}
      stroke="var(--ink)"
      stroke-width={kind === 'manual' ? 5 : 3}
      stroke-dasharray={kind === 'automatic' ? '8 5' : undefined}
    />
  );
}

/** Half waves of at most 8 px, whole ones, so that the line ends where the walk does. */
function wave(from: number, to: number, y: number): string {
  const halves = Math.max(2, Math.round((to - from) / 8));
  const step = (to - from) / halves;
  const parts = Array.from({ length: halves }, (_, half) => {
    const lift = half % 2 === 0 ? -6 : 6;
    return `Q${from + (half + 0.5) * step},${y + lift} ${from + (half + 1) * step},${y}`;
  });
  return `M${from},${y} ${parts.join(' ')}`;
}
