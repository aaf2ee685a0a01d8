import { ChartFrame } from './chart-frame';
import { linearScale } from './linear-scale';
import { roundTicks } from './round-ticks';
import { textWidth } from './text-width';

/** One day of the picture; all amounts in one unit of time per good part. */
export interface MixBar {
  readonly label: string;
  /** What the parts of the day demand. */
  readonly mix: number;
  /** What a good part took in all. */
  readonly taken: number;
  readonly mixText: string;
  readonly takenText: string;
  readonly efficiencyText: string;
}

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly bars: readonly MixBar[];
  readonly axisText: string;
  readonly tickText: (value: number) => string;
}

const SMALL = 14;
const ROW = 74;
const BAR = 30;
const FOOT = 44;

/**
 * What a good part took on two days, over what the parts of each day demanded: the filled bar is the mix, and the
 * upright mark the time it took. It draws the numbers it is given and computes none.
 */
export function MixChart({ id, title, description, width, bars, axisText, tickText }: Props) {
  const most = Math.max(...bars.flatMap(({ mix, taken }) => [mix, taken]));
  const ticks = roundTicks(0, most, width < 600 ? 4 : 6);
  const note = Math.max(...bars.map(({ takenText }) => textWidth(takenText, SMALL)));
  const x = linearScale({ low: 0, high: ticks.at(-1)!, start: 2, end: Math.max(40, width - note - 16) });
  const height = bars.length * ROW + FOOT;
  const bottom = bars.length * ROW;
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={height}>
      {ticks.map((tick) => (
        <g key={tick}>
          <line x1={x(tick)} x2={x(tick)} y1={4} y2={bottom + 4} stroke="var(--rule)" />
          <text
            x={x(tick)}
            y={bottom + 20}
            font-size={SMALL}
            text-anchor={tick === 0 ? 'start' : 'middle'}
            fill="var(--quiet)"
          >
            {tickText(tick)}
          </text>
        </g>
      ))}
      <text x={0} y={height - 4} font-size={SMALL} fill="var(--quiet)">
        {axisText}
      </text>
      {bars.map(({ label, mix, taken, mixText, takenText, efficiencyText }, row) => {
        const top = row * ROW + 26;
        return (
          <g key={label} font-size={SMALL}>
            <text x={2} y={row * ROW + 18} font-weight={600} fill="var(--ink)">
              {label}
              <tspan dx={10} font-weight={400} fill="var(--quiet)">
                {efficiencyText}
              </tspan>
            </text>
            <rect x={x(0)} y={top} width={x(mix) - x(0)} height={BAR} fill="var(--quiet)" />
            <text x={x(0) + 8} y={top + 20} fill="var(--paper)">
              {mixText}
            </text>
            {/* On an edge of paper: on the bar a mark of ink alone is not to be seen. */}
            {[10, 4].map((thick) => (
              <line
                key={thick}
                x1={x(taken)}
                x2={x(taken)}
                y1={top - 5}
                y2={top + BAR + 5}
                stroke={thick === 4 ? 'var(--ink)' : 'var(--paper)'}
                stroke-width={thick}
              />
            ))}
            <text x={Math.max(x(taken), x(mix)) + 10} y={top + 20} font-weight={600} fill="var(--ink)">
              {takenText}
            </text>
          </g>
        );
      })}
    </ChartFrame>
  );
}
