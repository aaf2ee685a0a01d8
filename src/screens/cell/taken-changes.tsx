import { cellWhatIf as says } from '../../i18n/en/cell-what-if';
import type { ActiveChange, TriedChange } from './tried-change';

interface Props {
  readonly active: readonly ActiveChange[];
  readonly take: (tried: TriedChange) => void;
}

/**
 * Each of the changes, with a way to take it back, at the head of the figures that they give. There they may take as many
 * lines as they need: what is tapped to change something stands beside or before them.
 */
export function TakenChanges({ active, take }: Props) {
  return (
    <div class="cell-changes">
      {active.map(({ text, without }) => (
        <button
          key={text}
          type="button"
          class="choice"
          aria-label={says.takeBack(text)}
          onClick={() => take(without)}
        >
          {text} <span aria-hidden="true">×</span>
        </button>
      ))}
    </div>
  );
}
