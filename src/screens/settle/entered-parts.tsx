import type { Part } from '../../domain/shop/shop';
import { enterTurn as words } from '../../i18n/en/enter-turn';

/** How many of one part, as typed. */
export interface PartsTyped {
  readonly part: string;
  readonly done: string;
  readonly rework: string;
  readonly scrap: string;
}

interface Props {
  readonly parts: readonly Part[];
  readonly lines: readonly PartsTyped[];
  change(lines: readonly PartsTyped[]): void;
}

/** A line that is still to be filled in: with the part where there is only one, and else with none, so that it is chosen. */
export function emptyLine(parts: readonly Part[]): PartsTyped {
  return { part: parts.length === 1 ? parts[0]!.id : '', done: '', rework: '', scrap: '' };
}

const counts = ['done', 'rework', 'scrap'] as const;

/** A line a part: which, how many, and what became of them. */
export function EnteredParts({ parts, lines, change }: Props) {
  const alter = (place: number, part: Partial<PartsTyped>) =>
    change(lines.map((line, at) => (at === place ? { ...line, ...part } : line)));
  return (
    <>
      {lines.map((line, place) => (
        <div class="settle-span" key={`${place}`}>
          <label class="field">
            <span>{words.short.part}</span>
            <select
              aria-label={words.part(place + 1)}
              value={line.part}
              onChange={(event) => alter(place, { part: event.currentTarget.value })}
            >
              {line.part === '' && <option value="">{words.choosePart}</option>}
              {parts.map(({ id, code, name }) => (
                <option key={id} value={id}>
                  {name ? `${code} ${name}` : code}
                </option>
              ))}
            </select>
          </label>
          {counts.map((which) => (
            <label class="field settle-minutes" key={which}>
              <span>{words.short[which]}</span>
              <input
                aria-label={words[which](place + 1)}
                inputMode="numeric"
                maxLength={4}
                value={line[which]}
                onInput={(event) => alter(place, { [which]: event.currentTarget.value })}
              />
            </label>
          ))}
        </div>
      ))}
      <p class="small quiet">{words.doneNote}</p>
      <div class="row">
        <button type="button" class="button" onClick={() => change([...lines, emptyLine(parts)])}>
          {words.addPart}
        </button>
      </div>
    </>
  );
}
