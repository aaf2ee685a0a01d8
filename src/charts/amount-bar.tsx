import { linearScale } from './linear-scale';

interface Props {
  /** Any one unit, from 0 to `most`. */
  readonly amount: number;
  /** The longest bar of the column. */
  readonly most: number;
  readonly width: number;
  /** Drawn in outline: there, but not to be read as a cause. */
  readonly isNeutral?: boolean;
}

/** A bar in a column of bars, beside the number that it draws. */
export function AmountBar({ amount, most, width, isNeutral = false }: Props) {
  const length = most > 0 ? linearScale({ low: 0, high: most, start: 0, end: width - 2 })(amount) : 0;
  return (
    <svg width={width} height={18} viewBox={`0 0 ${width} 18`} aria-hidden="true" style="display:block">
      <rect
        x={1}
        y={1}
        width={Math.max(1, length)}
        height={16}
        fill={isNeutral ? 'var(--sheet)' : 'var(--quiet)'}
        stroke="var(--quiet)"
        stroke-width={1.5}
      />
    </svg>
  );
}
