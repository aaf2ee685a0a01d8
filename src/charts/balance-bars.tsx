import { ChartFrame } from './chart-frame';
import { HatchPatterns, hatchFill } from './hatch-patterns';
import { linearScale } from './linear-scale';
import { roundTicks } from './round-ticks';
import { fittedText, textWidth } from './text-width';
import { tickDecimals } from './tick-decimals';

export interface BalanceBar {
  readonly title: string;
  /** From the foot up; any one unit of time. */
  readonly pieces: readonly {
    readonly name: string;
    readonly amount: number;
    /** The machine works; otherwise a person does. */
    readonly isMachine?: boolean;
  }[];
  /** Where eight cycles in ten end; null where it says nothing. */
  readonly p80: number | null;
}

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height?: number;
  readonly bars: readonly BalanceBar[];
  readonly takt: { readonly at: number; readonly text: string };
  readonly p80Text: string;
  readonly tickText: (value: number, digits: number) => string;
}

const LEFT = 46;
const HEAD = 26;
const FOOT = 24;
const SMALL = 14;

/** Operator balance chart: a bar for each person, elements stacked to scale, the takt a line across. */
export function BalanceBars(props: Props) {
  const { id, title, description, width, height = 360, bars, takt, p80Text, tickText } = props;
  const totals = bars.map(({ pieces, p80 }) =>
    Math.max(
      p80 ?? 0,
      pieces.reduce((sum, { amount }) => sum + amount, 0),
    ),
  );
  const ticks = roundTicks(0, Math.max(takt.at, ...totals) * 1.02, 8);
  const decimals = tickDecimals(ticks);
  const y = linearScale({ low: 0, high: ticks.at(-1)!, start: height - FOOT, end: HEAD });
  const step = (width - LEFT) / bars.length;
  const wide = Math.min(220, step - 16);
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
      {bars.map(({ title: name, pieces, p80 }, place) => {
        const x = LEFT + place * step + (step - wide) / 2;
        let from = 0;
        return (
          <g key={name}>
            {pieces.map((piece) => {
              const [low, high] = [y(from), y(from + piece.amount)];
              from += piece.amount;
              return (
                <g key={piece.name}>
                  <rect
                    x={x}
                    y={high}
                    width={wide}
                    height={Math.max(0.5, low - high)}
                    fill={piece.isMachine ? hatchFill(id, 'diagonal') : 'var(--sheet)'}
                    stroke="var(--ink)"
                    stroke-width={1.5}
                  />
                  {low - high >= 17 && !piece.isMachine && (
                    <text x={x + 8} y={(low + high) / 2 + 5} font-size={SMALL} fill="var(--ink)">
                      {fittedText(piece.name, wide - 14, SMALL)}
                    </text>
                  )}
                </g>
              );
            })}
            {p80 !== null && (
              <g>
                <line
                  x1={x - 6}
                  x2={x + wide + 6}
                  y1={y(p80)}
                  y2={y(p80)}
                  stroke="var(--ink)"
                  stroke-width={3}
                />
                <text x={x + wide} y={y(p80) - 5} font-size={SMALL} text-anchor="end" fill="var(--ink)">
                  {p80Text}
                </text>
              </g>
            )}
            <text x={x + wide / 2} y={height - 6} font-size={SMALL} text-anchor="middle" fill="var(--ink)">
              {fittedText(name, step, SMALL)}
            </text>
          </g>
        );
      })}
      <line
        x1={LEFT - 6}
        x2={width}
        y1={y(takt.at)}
        y2={y(takt.at)}
        stroke="var(--ink)"
        stroke-width={2.5}
        stroke-dasharray="9 6"
      />
      <rect
        x={LEFT}
        y={y(takt.at) - 21}
        width={textWidth(takt.text, SMALL)}
        height={17}
        fill="var(--paper)"
      />
      <text x={LEFT + 4} y={y(takt.at) - 8} font-size={SMALL} font-weight={600} fill="var(--ink)">
        {takt.text}
      </text>
    </ChartFrame>
  );
}
