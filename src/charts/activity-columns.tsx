import { ChartFrame } from './chart-frame';
import { HatchPatterns, hatchFill } from './hatch-patterns';
import { linearScale } from './linear-scale';
import { roundTicks } from './round-ticks';
import { fittedText } from './text-width';
import { tickDecimals } from './tick-decimals';

export interface ActivityColumn {
  readonly title: string;
  /** Without a gap, from 0 to the end; any one unit of time. */
  readonly activities: readonly {
    readonly name: string;
    readonly state: 'working' | 'attending' | 'waiting';
    readonly from: number;
    readonly to: number;
  }[];
}

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** The end of the cycle, and of the scale: at least that, so that two charts can share one. */
  readonly end: number;
  readonly scaleEnd: number;
  readonly columns: readonly ActivityColumn[];
  readonly tickText: (value: number, digits: number) => string;
}

const HEAD = 26;
const LEFT = 46;
const SMALL = 14;
const GAP = 10;

/**
 * The multiple-activity chart: time runs down, a column each; working filled, attending hatched, waiting blank.
 * It draws the times it is given.
 */
export function ActivityColumns(props: Props) {
  const { id, title, description, width, height, end, scaleEnd, columns, tickText } = props;
  if (!(end > 0)) return null;
  const y = linearScale({ low: 0, high: scaleEnd, start: HEAD, end: height - 6 });
  const step = (width - LEFT) / columns.length;
  const ticks = roundTicks(0, scaleEnd, 8).filter((tick) => tick <= scaleEnd);
  const decimals = ticks.length > 1 ? tickDecimals(ticks) : 2;
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={height}>
      <HatchPatterns id={id} />
      {ticks.map((tick) => (
        <g key={tick}>
          <line x1={LEFT - 6} x2={width} y1={y(tick)} y2={y(tick)} stroke="var(--rule)" />
          <text x={LEFT - 10} y={y(tick) + 5} font-size={SMALL} text-anchor="end" fill="var(--quiet)">
            {tickText(tick, decimals)}
          </text>
        </g>
      ))}
      {columns.map((column, place) => {
        const x = LEFT + place * step;
        return (
          <g key={column.title}>
            <text x={x} y={15} font-size={SMALL} font-weight={600} fill="var(--ink)">
              {fittedText(column.title, step - GAP, SMALL)}
            </text>
            {column.activities.map(({ name, state, from, to }) => (
              <g key={from}>
                <rect
                  x={x}
                  y={y(from)}
                  width={step - GAP}
                  height={Math.max(0.5, y(to) - y(from))}
                  fill={
                    state === 'working'
                      ? 'var(--quiet)'
                      : hatchFill(id, state === 'attending' ? 'diagonal' : 'blank')
                  }
                  stroke={state === 'waiting' ? 'var(--rule-strong)' : 'var(--sheet)'}
                  stroke-width={1.2}
                  stroke-dasharray={state === 'waiting' ? '4 4' : undefined}
                />
                {y(to) - y(from) >= 17 && (
                  <text
                    x={x + 8}
                    y={(y(from) + y(to)) / 2 + 5}
                    font-size={SMALL}
                    fill={state === 'working' ? 'var(--sheet)' : 'var(--ink)'}
                    // On hatching a text is read by the paper around it.
                    paint-order="stroke"
                    stroke={state === 'attending' ? 'var(--sheet)' : 'none'}
                    stroke-width={state === 'attending' ? 5 : 0}
                  >
                    {fittedText(name, step - GAP - 14, SMALL)}
                  </text>
                )}
              </g>
            ))}
          </g>
        );
      })}
      <line x1={LEFT - 6} x2={width} y1={y(end)} y2={y(end)} stroke="var(--ink)" stroke-width={2.5} />
    </ChartFrame>
  );
}
