import { useState } from 'preact/hooks';
import { study } from '../../i18n/en/study';
import { type Condition, conditionsOf, conditionsText } from './conditions';
import { TextField } from './text-field';

const words = study.prepare;

interface Props {
  readonly conditions: string;
  readonly onChange: (conditions: string) => void;
}

/** What the time will hold under, each with a name of the shop's own; the usual names are a tap away. */
export function ConditionFields({ conditions, onChange }: Props) {
  // A line being written may still be empty, which the text cannot say.
  const [lines, setLines] = useState<readonly Condition[]>(() => conditionsOf(conditions));
  const shown = conditionsText(lines) === conditions ? lines : conditionsOf(conditions);
  const change = (changed: readonly Condition[]) => {
    setLines(changed);
    onChange(conditionsText(changed));
  };
  const put = (place: number, part: Partial<Condition>) =>
    change(shown.map((line, index) => (index === place ? { ...line, ...part } : line)));
  const unused = words.conditionNames.filter((name) => !shown.some((line) => line.name === name));
  return (
    <section class="stack" aria-label={words.conditions}>
      <h3>{words.conditions}</h3>
      {shown.map((line, place) => (
        <div class="study-condition" key={place}>
          <TextField
            label={words.condition}
            value={line.name}
            onInput={(name) => put(place, { name: name.replace(/[:;]/g, '') })}
          />
          <TextField
            label={words.conditionIs}
            value={line.value}
            onInput={(value) => put(place, { value: value.replace(/;/g, ',') })}
          />
          <button
            type="button"
            class="button"
            onClick={() => change(shown.filter((_, index) => index !== place))}
          >
            {words.remove}
          </button>
        </div>
      ))}
      <div class="choices">
        {[...unused, ''].map((name) => (
          <button
            key={name}
            type="button"
            class="choice"
            onClick={() => change([...shown, { name, value: '' }])}
          >
            + {name || words.addCondition}
          </button>
        ))}
      </div>
    </section>
  );
}
