interface Props {
  readonly values: readonly number[];
  /** What the strip is, for those who cannot see it. */
  readonly name: string;
  readonly write: (value: number) => string;
}

const WIDTH = 84;
const EDGE = 6;

/** Two to four readings as they are: a dot each on a line, a mark at their mean, the range below. */
export function DotStrip({ values, name, write }: Props) {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const place = (value: number) =>
    high === low ? WIDTH / 2 : EDGE + ((value - low) / (high - low)) * (WIDTH - 2 * EDGE);
  return (
    <span class="study-dots">
      <span class="visually-hidden">{name}</span>
      <svg width={WIDTH} height="20" viewBox={`0 0 ${WIDTH} 20`} aria-hidden="true">
        <line x1="0" y1="12" x2={WIDTH} y2="12" stroke="currentColor" stroke-width="1" />
        <line x1={place(mean)} y1="2" x2={place(mean)} y2="18" stroke="currentColor" stroke-width="2" />
        {values.map((value, index) => (
          <circle
            key={`${index}:${value}`}
            cx={place(value)}
            cy="12"
            r="4"
            fill="none"
            stroke="currentColor"
            stroke-width="2"
          />
        ))}
      </svg>
      <span class="small">
        {write(low)} … {write(high)}
      </span>
    </span>
  );
}
