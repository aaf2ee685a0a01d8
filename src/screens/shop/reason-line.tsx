import type { StopReason } from '../../domain/records/shop-fact';
import { reasonWords } from '../../i18n/en/reasons';
import { shop } from '../../i18n/en/shop';

const words = shop.reasons;
const kinds = Object.keys(words.kinds) as StopReason['category'][];

interface Props {
  readonly reason: StopReason;
  /** 1, 2, 3 … */
  readonly place: number;
  readonly change: (reason: StopReason) => void;
  /** Null for the last one left. */
  readonly remove: (() => void) | null;
}

/** One reason: its words, and what its time counts as. Words left as they came stay worded by the tablet. */
export function ReasonLine({ reason, place, change, remove }: Props) {
  const given = reasonWords[reason.id] ?? '';
  const shown = reason.label || given;
  return (
    <li class="shop-reason">
      <label class="field">
        <span class="visually-hidden">{words.words(place)}</span>
        <input
          defaultValue={shown}
          autocomplete="off"
          maxLength={40}
          onInput={(event) => {
            const typed = event.currentTarget.value.trim();
            change({ ...reason, label: typed === given ? '' : typed });
          }}
        />
      </label>
      <label class="field">
        <span class="visually-hidden">{words.kindOf(place)}</span>
        <select
          value={reason.category}
          onChange={(event) => {
            const category = kinds.find((kind) => kind === event.currentTarget.value);
            if (category) change({ ...reason, category });
          }}
        >
          {kinds.map((kind) => (
            <option key={kind} value={kind}>
              {words.kinds[kind]}
            </option>
          ))}
        </select>
      </label>
      <button
        type="button"
        class="button plain"
        aria-label={words.remove(shown || words.unnamed)}
        disabled={!remove}
        onClick={() => remove?.()}
      >
        {words.removeShort}
      </button>
    </li>
  );
}
