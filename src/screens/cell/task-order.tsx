import { cellPeople as says } from '../../i18n/en/cell-people';

type After = Readonly<Record<string, readonly string[]>>;

interface Props {
  readonly names: readonly string[];
  readonly after: After;
  readonly change: (after: After) => void;
}

/** Which element each one must come after; in the order of the method until somebody says otherwise. */
export function TaskOrder({ names, after, change }: Props) {
  return (
    <details class="cell-how">
      <summary>{says.order}</summary>
      <div class="cell-order">
        {names.map((name) => (
          <label key={name} class="field">
            <span>
              {name} {says.after}
            </span>
            <select
              value={after[name]?.[0] ?? ''}
              onChange={(event) => {
                const { value } = event.currentTarget;
                change({ ...after, [name]: value ? [value] : [] });
              }}
            >
              <option value="">{says.first}</option>
              {names
                .filter((other) => other !== name)
                .map((other) => (
                  <option key={other}>{other}</option>
                ))}
            </select>
          </label>
        ))}
      </div>
    </details>
  );
}
