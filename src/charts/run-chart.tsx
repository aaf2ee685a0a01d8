import { ChartFrame } from './chart-frame';
import { linearScale, type Scale } from './linear-scale';
import { roundTicks } from './round-ticks';
import { RunChartFoot } from './run-chart-foot';
import { limitLines, RunChartLimits, type RunLimits } from './run-chart-limits';
import { namedSteps, RunChartSteps, STEP_ROW } from './run-chart-steps';
import { spreadApart } from './spread-apart';
import { textWidth } from './text-width';
import { tickDecimals } from './tick-decimals';

/** A point of a run, in time order; all amounts in the same unit. */
export interface RunPoint {
  readonly key: string;
  /** Under the point: short, as the day of the month. */
  readonly label: string;
  /** Under the first label of its kind: the month. */
  readonly group: string;
  readonly value: number;
  /** How many went into the point. */
  readonly count: string;
  /** The target that held there; null without one. */
  readonly target: number | null;
  readonly isChosen: boolean;
  /** Too few went into it to lean on: drawn hollow. */
  readonly isFew: boolean;
  /** The chart says that something other than chance is at work: ringed. */
  readonly isSignal?: boolean;
}

/** A step in the run: what comes from this place on is not like what was before. */
export interface RunStep {
  /** The place of the first point after it, from 0. */
  readonly from: number;
  readonly text: string;
}

/** A line across the chart with its words at the right end. */
export interface RunLine {
  readonly value: number;
  readonly text: string;
}

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly points: readonly RunPoint[];
  /** In order. The centre line belongs to what comes after the last of them. */
  readonly steps: readonly RunStep[];
  /** The centres of what comes before, one for each step, in order. */
  readonly earlier?: readonly number[];
  readonly centre: RunLine;
  /** Limits between which the points lie by chance alone, stretch by stretch. */
  readonly limits?: readonly RunLimits[];
  /** Words for the target line, as it stands at the last point; null when no point has one. */
  readonly targetText: string | null;
  readonly countTitle: string;
  readonly axisText: string;
  readonly tickText: (value: number, decimals: number) => string;
}

const SMALL = 14;
const FOOT = 74;
const HEAD = 30;
const LEFT = 64;

/** Run chart: values in time order with their median. It draws the numbers it is given and computes none. */
export function RunChart(props: Props) {
  const { id, title, description, width, height, points, steps, centre, targetText, axisText, tickText } =
    props;
  const { limits = [], earlier = [] } = props;
  const values = points.flatMap(({ value, target }) => (target === null ? [value] : [value, target]));
  const ticks = runTicks([
    ...values,
    centre.value,
    ...earlier,
    ...limits.flatMap(({ lower, upper }) => [lower, upper]),
  ]);
  const decimals = tickDecimals(ticks);
  const newestLimits = limits.find(({ to }) => to === points.length - 1);
  const lines = limitLines(newestLimits);
  const words = [centre.text, targetText ?? '', ...lines.map(({ text }) => text)];
  const right = width - Math.ceil(Math.max(...words.map((text) => textWidth(text, SMALL)))) - 14;
  const bottom = height - FOOT;
  const x = runPlaces(points.length, LEFT, right);
  const between = (place: number) => (x(place - 1) + x(place)) / 2;
  const named = namedSteps(steps, between, right);
  const head = HEAD + STEP_ROW * Math.max(0, ...named.map(({ row }) => row + 1));
  const y = linearScale({ low: ticks[0]!, high: ticks.at(-1)!, start: bottom, end: head });
  const lastStep = steps.at(-1);
  const lastTarget = points.at(-1)?.target ?? null;
  const wanted = [centre.value, lastTarget ?? centre.value, ...lines.map(({ value }) => value)];
  const [centreAt, targetAt, ...linesAt] = spreadApart(wanted.map(y), 20, { low: head, high: bottom });
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={height}>
      <text x={0} y={14} font-size={SMALL} fill="var(--quiet)">
        {axisText}
      </text>
      {ticks.map((tick) => (
        <g key={tick}>
          <line x1={LEFT} x2={right} y1={y(tick)} y2={y(tick)} stroke="var(--rule)" />
          <text x={LEFT - 10} y={y(tick) + 5} font-size={SMALL} text-anchor="end" fill="var(--quiet)">
            {tickText(tick, decimals)}
          </text>
        </g>
      ))}
      <Chosen points={points} x={x} top={head - 6} bottom={height - 20} />
      <line
        x1={lastStep ? between(lastStep.from) : LEFT}
        x2={right}
        y1={y(centre.value)}
        y2={y(centre.value)}
        stroke="var(--ink)"
        stroke-width={1.5}
      />
      {earlier.map((value, place) => (
        <line
          key={`${steps[place]!.from}`}
          x1={place === 0 ? LEFT : between(steps[place - 1]!.from)}
          x2={between(steps[place]!.from)}
          y1={y(value)}
          y2={y(value)}
          stroke="var(--ink)"
          stroke-width={1.5}
        />
      ))}
      <path
        d={targetPath(points, x, y, { from: LEFT, to: right })}
        stroke="var(--ink)"
        stroke-width={2.5}
        stroke-dasharray="9 6"
        fill="none"
      />
      <RunChartLimits
        limits={limits}
        between={between}
        left={LEFT}
        right={right}
        last={points.length - 1}
        y={y}
      />
      <RunChartSteps named={named} top={head} bottom={bottom} />
      <path
        d={pointsPath(points, x, y, new Set(steps.map(({ from }) => from)))}
        fill="none"
        stroke="var(--quiet)"
        stroke-width={1.5}
      />
      {points.map(
        ({ key, value, isSignal }, place) =>
          isSignal && (
            <circle
              key={key}
              cx={x(place)}
              cy={y(value)}
              r={13}
              fill="none"
              stroke="var(--ink)"
              stroke-width={2.5}
            />
          ),
      )}
      {points.map(({ key, value, isChosen, isFew }, place) => (
        <circle
          key={key}
          cx={x(place)}
          cy={y(value)}
          r={isChosen ? 8 : 5.5}
          fill={isFew ? 'var(--paper)' : 'var(--ink)'}
          stroke={isFew ? 'var(--ink)' : 'var(--paper)'}
          stroke-width={isFew ? 2 : 1.5}
        />
      ))}
      <text x={right + 10} y={centreAt! + 5} font-size={SMALL} fill="var(--ink)">
        {centre.text}
      </text>
      {lines.map(({ text }, place) => (
        <text key={text} x={right + 10} y={linesAt[place]! + 5} font-size={SMALL} fill="var(--quiet)">
          {text}
        </text>
      ))}
      {targetText && lastTarget !== null && (
        <text x={right + 10} y={targetAt! + 5} font-size={SMALL} font-weight={600} fill="var(--ink)">
          {targetText}
        </text>
      )}
      <RunChartFoot points={points} countTitle={props.countTitle} x={x} bottom={bottom} />
    </ChartFrame>
  );
}

/** Round values around all that is drawn; a run of equal values has air above and below it. */
function runTicks(values: readonly number[]): number[] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const air = high > low ? (high - low) * 0.08 : Math.max(Math.abs(high) * 0.1, 0.1);
  return roundTicks(Math.max(0, low - air), high + air, 6);
}

/** Equal steps; a single point stands in the middle. */
function runPlaces(count: number, left: number, right: number): Scale {
  const inset = 18;
  if (count < 2) return () => (left + right) / 2;
  return linearScale({ low: 0, high: count - 1, start: left + inset, end: right - inset });
}

/** From point to point, with a gap at each step: no day lies between two methods. */
function pointsPath(points: readonly RunPoint[], x: Scale, y: Scale, gaps: ReadonlySet<number>): string {
  return points
    .map(({ value }, place) => `${place === 0 || gaps.has(place) ? 'M' : 'L'}${x(place)} ${y(value)}`)
    .join(' ');
}

/** The target as it stood at each point: level to halfway, then a step where it changed; no line without one. */
function targetPath(
  points: readonly RunPoint[],
  x: Scale,
  y: Scale,
  ends: { from: number; to: number },
): string {
  let before: number | null = null;
  const steps = points.map(({ target }, place) => {
    if (target === null) {
      before = null;
      return '';
    }
    const from = place === 0 ? ends.from : (x(place - 1) + x(place)) / 2;
    const to = place === points.length - 1 ? ends.to : (x(place) + x(place + 1)) / 2;
    const join = before === null ? `M${from} ${y(target)}` : before === target ? '' : `V${y(target)}`;
    before = target;
    return `${join} H${to}`;
  });
  return steps.join(' ').trim();
}

function Chosen({
  points,
  x,
  top,
  bottom,
}: {
  points: readonly RunPoint[];
  x: Scale;
  top: number;
  bottom: number;
}) {
  const place = points.findIndex(({ isChosen }) => isChosen);
  if (place < 0) return null;
  return <rect x={x(place) - 14} y={top} width={28} height={bottom - top} fill="var(--shade)" />;
}
