import { ChartFrame } from './chart-frame';
import { everyNth } from './every-nth';
import { linearScale } from './linear-scale';
import { textWidth } from './text-width';
import { tickDecimals } from './tick-decimals';

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height?: number;
  /** Rising; one more than there are counts. */
  readonly edges: readonly number[];
  readonly counts: readonly number[];
  /** Values marked by a line with words above it. */
  readonly marks: readonly {
    readonly at: number;
    readonly text: string;
    /** The words stand before the line, so that they do not run into those of the next one. */
    readonly isBefore?: boolean;
  }[];
  readonly tickText: (value: number, digits: number) => string;
}

const SMALL = 14;
const FOOT = 22;
const HEAD = 40;
const INSET = 14;

/** Histogram: how often values fell between two edges. It draws the counts it is given. */
export function Histogram(props: Props) {
  const { id, title, description, width, height = 150, edges, counts, marks, tickText } = props;
  const [low, high] = [edges[0]!, edges.at(-1)!];
  const x = linearScale({ low, high, start: INSET, end: width - INSET });
  const y = linearScale({ low: 0, high: Math.max(1, ...counts), start: height - FOOT, end: HEAD });
  const step = x(edges[1]!) - x(low);
  const digits = tickDecimals(edges);
  const nth = everyNth(step, Math.max(...edges.map((edge) => textWidth(tickText(edge, digits), SMALL))) + 8);
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={height}>
      {counts.map((count, place) => (
        <rect
          key={edges[place]}
          x={x(edges[place]!) + 0.5}
          y={y(count)}
          width={Math.max(1, x(edges[place + 1]!) - x(edges[place]!) - 1)}
          height={height - FOOT - y(count)}
          fill="var(--quiet)"
        />
      ))}
      <line x1={INSET} x2={width - INSET} y1={height - FOOT} y2={height - FOOT} stroke="var(--ink)" />
      {edges.map((edge, place) =>
        place % nth === 0 ? (
          <text
            key={edge}
            x={x(edge)}
            y={height - 5}
            font-size={SMALL}
            text-anchor="middle"
            fill="var(--quiet)"
          >
            {tickText(edge, digits)}
          </text>
        ) : null,
      )}
      {marks
        .filter(({ at }) => at >= low && at <= high)
        .map(({ at, text, isBefore = false }, place) => {
          // Words of neighbouring marks stand on two lines.
          const line = 14 + 17 * (place % 2);
          const long = textWidth(text, SMALL) + 6;
          const isRight = x(at) + long < width && !(isBefore && x(at) > long);
          return (
            <g key={text}>
              <line
                x1={x(at)}
                x2={x(at)}
                y1={line - 10}
                y2={height - FOOT}
                stroke="var(--ink)"
                stroke-width={2}
                stroke-dasharray={place % 2 ? '6 4' : undefined}
              />
              <text
                x={x(at) + (isRight ? 6 : -6)}
                y={line}
                font-size={SMALL}
                text-anchor={isRight ? 'start' : 'end'}
                fill="var(--ink)"
              >
                {text}
              </text>
            </g>
          );
        })}
    </ChartFrame>
  );
}
