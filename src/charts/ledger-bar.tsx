import { ChartFrame } from './chart-frame';
import { type Hatching, HatchPatterns, hatchFill } from './hatch-patterns';
import { linearScale } from './linear-scale';

export interface LedgerPiece {
  readonly name: string;
  /** Any one unit; nothing negative. */
  readonly amount: number;
  readonly hatching: Hatching;
}

interface Props {
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height?: number;
  readonly pieces: readonly LedgerPiece[];
}

/**
 * One bar from end to end, cut into pieces by their amounts: what adds up to a whole, drawn as a whole. The
 * names stand beside it, in a table with the same hatchings.
 */
export function LedgerBar({ id, title, description, width, height = 56, pieces }: Props) {
  const whole = pieces.reduce((sum, { amount }) => sum + amount, 0);
  if (!(whole > 0)) return null;
  const place = linearScale({ low: 0, high: whole, start: 1, end: width - 1 });
  let before = 0;
  return (
    <ChartFrame id={id} title={title} description={description} width={width} height={height}>
      <HatchPatterns id={id} />
      {pieces.map(({ name, amount, hatching }) => {
        const x = place(before);
        before += amount;
        return (
          <rect
            key={name}
            x={x}
            y={1}
            width={place(before) - x}
            height={height - 2}
            fill={hatchFill(id, hatching)}
            stroke="var(--ink)"
            stroke-width={1.5}
          />
        );
      })}
    </ChartFrame>
  );
}
