import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import type { StudyDraft } from './study-draft';
import { TextField } from './text-field';

const words = study.prepare;

interface Props {
  readonly draft: StudyDraft;
  readonly onChange: (changes: Partial<StudyDraft>) => void;
}

/** Whose pace is judged and who judges it: codes, not names. */
export function PeopleFields({ draft, onChange }: Props) {
  const { people } = useApp().bench.shop.value;
  return (
    <div class="study-people">
      <div class="stack">
        <TextField
          label={words.operator}
          value={draft.operator}
          onInput={(operator) => onChange({ operator })}
        />
        {people.length > 0 && (
          <div class="choices">
            {people.map((code) => (
              <button
                key={code}
                type="button"
                class="choice"
                aria-pressed={code === draft.operator.trim()}
                onClick={() => onChange({ operator: code })}
              >
                {code}
              </button>
            ))}
          </div>
        )}
      </div>
      <TextField
        label={words.observer}
        value={draft.observer}
        onInput={(observer) => onChange({ observer })}
      />
    </div>
  );
}
