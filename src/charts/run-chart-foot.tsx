import { everyNth } from './every-nth';
import type { Scale } from './linear-scale';
import type { RunPoint } from './run-chart';
import { textWidth } from './text-width';

interface Props {
  readonly points: readonly RunPoint[];
  readonly countTitle: string;
  /** From a point's place in the row to pixels. */
  readonly x: Scale;
  readonly bottom: number;
}

const SMALL = 14;

/** Under the plot: the day, how many parts, and the month. Where there is no room, every second or third. */
export function RunChartFoot({ points, countTitle, x, bottom }: Props) {
  const step = points.length > 1 ? x(1) - x(0) : Number.POSITIVE_INFINITY;
  const widest = Math.max(
    ...points.flatMap(({ label, count }) => [textWidth(label, SMALL), textWidth(count, SMALL)]),
  );
  const nth = Number.isFinite(step) ? everyNth(step, widest + 8) : 1;
  let free = 0;
  return (
    <g>
      <text x={0} y={bottom + 42} font-size={SMALL} fill="var(--quiet)">
        {countTitle}
      </text>
      {points.map(({ key, label, count, group }, place) => {
        const isNewGroup = group !== points[place - 1]?.group && x(place) - 8 >= free;
        if (isNewGroup) free = x(place) - 8 + textWidth(group, SMALL) + 10;
        // Counted from the newest, so that the last day always has its label.
        const isWritten = (points.length - 1 - place) % nth === 0;
        return (
          <g key={key} font-size={SMALL} text-anchor="middle">
            {isWritten && (
              <>
                <text x={x(place)} y={bottom + 20} fill="var(--ink)">
                  {label}
                </text>
                <text x={x(place)} y={bottom + 42} fill="var(--quiet)">
                  {count}
                </text>
              </>
            )}
            {isNewGroup && (
              <text x={x(place) - 8} y={bottom + 66} text-anchor="start" fill="var(--ink)">
                {group}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
