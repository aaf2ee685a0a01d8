interface Props {
  readonly caption?: string;
  /** The first stands over what names a row. */
  readonly heads: readonly string[];
  /** Each begins with what names it. */
  readonly rows: readonly (readonly (string | number)[])[];
}

/** A ruled table of figures: heads above, names at the side. */
export function PlainTable({ caption, heads, rows }: Props) {
  return (
    <table class="sheet">
      {caption && <caption>{caption}</caption>}
      <thead>
        <tr>
          {heads.map((head) =>
            head ? (
              <th key={head} scope="col">
                {head}
              </th>
            ) : (
              <td key={head} />
            ),
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...cells], place) => (
          <tr key={place}>
            <th scope="row">{name}</th>
            {cells.map((cell, column) => (
              <td key={column}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
