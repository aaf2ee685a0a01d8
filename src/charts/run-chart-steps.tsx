import type { RunStep } from './run-chart';
import { textWidth } from './text-width';

interface Props {
  readonly steps: readonly RunStep[];
  /** Pixels halfway between the point before a place and the point at it. */
  readonly at: (place: number) => number;
  readonly top: number;
  readonly bottom: number;
  readonly right: number;
}

const SMALL = 14;

/** An upright line at each step, named above the plot as far as there is room: the newest first. */
export function RunChartSteps({ steps, at, top, bottom, right }: Props) {
  let free = Number.POSITIVE_INFINITY;
  const named = [...steps].reverse().map((step) => {
    const x = at(step.from);
    const width = textWidth(step.text, SMALL);
    const from = Math.max(0, Math.min(x + 6, right - width));
    const isNamed = from + width + 8 <= free;
    if (isNamed) free = from;
    return { ...step, x, from, isNamed };
  });
  return (
    <g>
      {named.map(({ from, text, x, isNamed }) => (
        <g key={`${x}`}>
          <line x1={x} x2={x} y1={top - 22} y2={bottom} stroke="var(--ink)" stroke-width={1} />
          {isNamed && (
            <text x={from} y={top - 10} font-size={SMALL} fill="var(--ink)">
              {text}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}
