/** A few figures in a row, each under its name. */
export function FigureRow({ figures }: { figures: readonly (readonly [name: string, value: string])[] }) {
  return (
    <dl class="cell-row">
      {figures.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd class="number">{value}</dd>
        </div>
      ))}
    </dl>
  );
}
