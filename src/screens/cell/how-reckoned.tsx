import { cellGoverns as says } from '../../i18n/en/cell';

/** The formulas behind a page, and where they are from. */
export function HowReckoned({ lines }: { lines: readonly string[] }) {
  return (
    <details class="cell-how">
      <summary>{says.how}</summary>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </details>
  );
}
