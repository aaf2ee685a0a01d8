/** Ways to fill an area that differ without colour. */
export const hatchings = ['solid', 'diagonal', 'cross', 'dots', 'upright', 'level', 'blank'] as const;
export type Hatching = (typeof hatchings)[number];

/** What to fill with, in a drawing that holds the HatchPatterns of the same id. */
export function hatchFill(id: string, hatching: Hatching): string {
  if (hatching === 'solid') return 'var(--ink)';
  if (hatching === 'blank') return 'var(--sheet)';
  return `url(#${id}-${hatching})`;
}

/** The patterns themselves: ink lines and dots on paper, 8 pixels apart. */
export function HatchPatterns({ id }: { id: string }) {
  const tile = (name: Hatching) => ({
    id: `${id}-${name}`,
    width: 8,
    height: 8,
    patternUnits: 'userSpaceOnUse',
  });
  const paper = <rect width={8} height={8} fill="var(--sheet)" />;
  const ink = { stroke: 'var(--ink)', 'stroke-width': 1.6 };
  return (
    <defs>
      <pattern {...tile('diagonal')}>
        {paper}
        <path d="M-2 2 L2 -2 M0 8 L8 0 M6 10 L10 6" {...ink} />
      </pattern>
      <pattern {...tile('cross')}>
        {paper}
        <path d="M0 8 L8 0 M0 0 L8 8" {...ink} />
      </pattern>
      <pattern {...tile('dots')}>
        {paper}
        <circle cx={4} cy={4} r={1.9} fill="var(--ink)" />
      </pattern>
      <pattern {...tile('upright')}>
        {paper}
        <path d="M4 0 V8" {...ink} />
      </pattern>
      <pattern {...tile('level')}>
        {paper}
        <path d="M0 4 H8" {...ink} />
      </pattern>
    </defs>
  );
}
