import { ChartFrame } from './chart-frame';
import { linearScale } from './linear-scale';
import { textWidth } from './text-width';

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  /** In order of time; any one unit. */
  readonly values: readonly number[];
  readonly centre: number;
  readonly lower: number;
  readonly upper: number;
  /** Places of the points to ring. */
  readonly ringed: readonly number[];
  readonly valueText: (value: number) => string;
}

const HEIGHT = 150;
const EDGE = 14;

/** Cycles in their order, with the mean drawn through and the natural limits dashed. It draws what it is given. */
export function CycleRun(props: Props) {
  const { id, title, description, width, values, centre, lower, upper, ringed, valueText } = props;
  const low = Math.min(lower, ...values);
  const high = Math.max(upper, ...values);
  if (values.length < 2 || !(low < high)) return null;
  const figures = [upper, centre, lower].map((value) => textWidth(valueText(value), 14));
  const left = Math.max(62, ...figures.map((wide) => wide + 8));
  const x = linearScale({ low: 0, high: values.length - 1, start: left + EDGE, end: width - EDGE });
  const y = linearScale({ low, high, start: HEIGHT - EDGE, end: EDGE });
  const lines = [
    { value: upper, dash: '6 5' },
    { value: centre, dash: undefined },
    { value: lower, dash: '6 5' },
  ];
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={HEIGHT}>
      {lines.map(({ value, dash }) => (
        <g key={value}>
          <line
            x1={left}
            x2={width}
            y1={y(value)}
            y2={y(value)}
            stroke="var(--rule-strong)"
            stroke-dasharray={dash}
          />
          <text x={left - 8} y={y(value) + 5} font-size="14" text-anchor="end" fill="var(--quiet)">
            {valueText(value)}
          </text>
        </g>
      ))}
      <polyline
        points={values.map((value, place) => `${x(place)},${y(value)}`).join(' ')}
        fill="none"
        stroke="var(--ink)"
      />
      {values.map((value, place) => (
        <circle key={place} cx={x(place)} cy={y(value)} r="3.5" fill="var(--ink)" />
      ))}
      {ringed.map((place) => (
        <circle
          key={place}
          cx={x(place)}
          cy={y(values[place]!)}
          r="9"
          fill="none"
          stroke="var(--ink)"
          stroke-width="2"
        />
      ))}
    </ChartFrame>
  );
}
