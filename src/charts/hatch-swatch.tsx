import { type Hatching, HatchPatterns, hatchFill } from './hatch-patterns';

/** A sample of a hatching, to stand beside its name. */
export function HatchSwatch({ id, hatching }: { id: string; hatching: Hatching }) {
  return (
    <svg width={34} height={22} viewBox="0 0 34 22" aria-hidden="true" style="vertical-align:-5px">
      <HatchPatterns id={id} />
      <rect
        x={1}
        y={1}
        width={32}
        height={20}
        fill={hatchFill(id, hatching)}
        stroke="var(--ink)"
        stroke-width={1.5}
      />
    </svg>
  );
}
