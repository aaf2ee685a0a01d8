import { ownRecord as own } from '../../i18n/en/own-record';

interface Props {
  readonly people: readonly string[];
  readonly person: string;
  choose(person: string): void;
}

/** Whose of those who shared a turn the record below is. */
export function OwnWhose({ people, person, choose }: Props) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere
    <div class="choices" role="group" aria-label={own.whose}>
      {people.map((code) => (
        <button
          type="button"
          key={code}
          class="choice"
          aria-pressed={code === person}
          onClick={() => choose(code)}
        >
          {code}
        </button>
      ))}
    </div>
  );
}
