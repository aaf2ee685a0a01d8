import type { RunStep } from './run-chart';
import { textWidth } from './text-width';

/** A step with the place of its line and of its words; row 0 is the one next to the plot. Without room the words are none. */
interface NamedStep extends RunStep {
  readonly x: number;
  readonly textAt: number;
  readonly row: number;
}

const SMALL = 14;
/** A line of words above the plot. */
export const STEP_ROW = 22;
/** More would leave no plot. */
const MOST_ROWS = 3;

/**
 * The steps with room for the words of each: the newest next to the plot, an earlier one a row higher where they would
 * lie on each other, and without its words where three rows do not do.
 *
 * @param at pixels halfway between the point before a place and the point at it
 */
export function namedSteps(
  steps: readonly RunStep[],
  at: (place: number) => number,
  right: number,
): NamedStep[] {
  const free: number[] = [];
  return [...steps].reverse().map((step) => {
    const x = at(step.from);
    const width = textWidth(step.text, SMALL);
    // Where it does not fit after its line it stands before it.
    const textAt = x + 6 + width <= right ? x + 6 : Math.max(0, x - 6 - width);
    const found = free.findIndex((left) => textAt + width + 8 <= left);
    const row = found < 0 ? free.length : found;
    if (row >= MOST_ROWS) return { ...step, text: '', x, textAt: x, row: 0 };
    // The line of this step goes up to its row: what comes before it ends there, too.
    for (let under = 0; under <= row; under += 1) free[under] = Math.min(x, textAt, free[under] ?? x);
    return { ...step, x, textAt, row };
  });
}

/** An upright line at each step, named above the plot. */
export function RunChartSteps({
  named,
  top,
  bottom,
}: {
  readonly named: readonly NamedStep[];
  readonly top: number;
  readonly bottom: number;
}) {
  return (
    <g>
      {named.map(({ x, row }) => (
        <line
          key={x}
          x1={x}
          x2={x}
          y1={top - STEP_ROW * (row + 1)}
          y2={bottom}
          stroke="var(--ink)"
          stroke-width={1}
        />
      ))}
      {named.map(({ text, x, textAt, row }) => (
        <text
          key={x}
          x={textAt}
          y={top - 10 - STEP_ROW * row}
          font-size={SMALL}
          fill="var(--ink)"
          stroke="var(--paper)"
          stroke-width={5}
          paint-order="stroke"
        >
          {text}
        </text>
      ))}
    </g>
  );
}
