import { turnSetup as words } from '../../i18n/en/turn-setup';

/** What anyone should know before timing work beside a machine: open the first time, folded away later. */
export function FirstCaution({ isFirst }: { isFirst: boolean }) {
  return (
    <details class="pace-caution" open={isFirst}>
      <summary>{isFirst ? words.cautionTitle : words.cautionAgain}</summary>
      <ul>
        {words.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </details>
  );
}
