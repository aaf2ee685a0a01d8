import { ChartFrame } from './chart-frame';
import { linearScale } from './linear-scale';
import { roundTicks } from './round-ticks';

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  /** After − before with its interval, and the threshold either way, in one unit. */
  readonly difference: number;
  readonly lower: number;
  readonly upper: number;
  readonly threshold: number;
  readonly words: {
    readonly matters: string;
    readonly same: string;
    readonly less: string;
    readonly more: string;
    readonly axis: string;
  };
  readonly tickText: (value: number) => string;
}

const SMALL = 14;
const HEIGHT = 128;
const TOP = 28;
const BOTTOM = 84;

/** A difference as a point with its interval, over the band that would not matter. It computes none of them. */
export function DifferenceChart(props: Props) {
  const { id, title, description, width, difference, lower, upper, threshold, words, tickText } = props;
  const ends = [lower, upper, -threshold, threshold, 0];
  const ticks = roundTicks(Math.min(...ends) * 1.1, Math.max(...ends) * 1.1, width < 600 ? 4 : 7);
  const x = linearScale({ low: ticks[0]!, high: ticks.at(-1)!, start: 30, end: width - 30 });
  const middle = (TOP + BOTTOM) / 2;
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={HEIGHT}>
      <text x={0} y={16} font-size={SMALL} fill="var(--quiet)">
        {words.less}
      </text>
      <text x={width} y={16} font-size={SMALL} text-anchor="end" fill="var(--quiet)">
        {words.more}
      </text>
      <rect
        x={x(-threshold)}
        y={TOP}
        width={x(threshold) - x(-threshold)}
        height={BOTTOM - TOP}
        fill="var(--shade)"
      />
      {[-threshold, threshold].map((edge) => (
        <line
          key={edge}
          x1={x(edge)}
          x2={x(edge)}
          y1={TOP}
          y2={BOTTOM}
          stroke="var(--quiet)"
          stroke-dasharray="5 4"
        />
      ))}
      <text x={x(-threshold) - 6} y={TOP + 14} font-size={SMALL} text-anchor="end" fill="var(--quiet)">
        {words.matters}
      </text>
      <line x1={x(0)} x2={x(0)} y1={TOP - 6} y2={BOTTOM} stroke="var(--ink)" />
      <text x={x(0)} y={16} font-size={SMALL} text-anchor="middle" fill="var(--ink)">
        {words.same}
      </text>
      <line x1={x(lower)} x2={x(upper)} y1={middle} y2={middle} stroke="var(--ink)" stroke-width={4} />
      {[lower, upper].map((end) => (
        <line
          key={end}
          x1={x(end)}
          x2={x(end)}
          y1={middle - 9}
          y2={middle + 9}
          stroke="var(--ink)"
          stroke-width={3}
        />
      ))}
      <circle cx={x(difference)} cy={middle} r={7} fill="var(--ink)" stroke="var(--paper)" stroke-width={2} />
      {ticks.map((tick) => (
        <text
          key={tick}
          x={x(tick)}
          y={BOTTOM + 18}
          font-size={SMALL}
          text-anchor="middle"
          fill="var(--quiet)"
        >
          {tickText(tick)}
        </text>
      ))}
      <text x={0} y={HEIGHT - 6} font-size={SMALL} fill="var(--quiet)">
        {words.axis}
      </text>
    </ChartFrame>
  );
}
