import { study } from '../../i18n/en/study';
import { ChoiceRow } from './choice-row';
import { type TermsDraft, termsOf } from './terms-draft';
import { TextField } from './text-field';

const words = study.terms;

interface Props {
  readonly terms: TermsDraft;
  readonly onChange: (terms: TermsDraft) => void;
}

/** The allowances: a policy of the shop, and its basis beside it. */
export function TermsFields({ terms, onChange }: Props) {
  const bases = {
    normal_time: `${words.bases.normal_time}: ${words.formulas.normal_time}`,
    shift: `${words.bases.shift}: ${words.formulas.shift}`,
  };
  const { lines } = terms;
  const sum = termsOf(terms)?.allowancePct;
  const put = (place: number, part: Partial<TermsDraft['lines'][number]>) =>
    onChange({
      ...terms,
      lines: lines.map((line, index) => (index === place ? { ...line, ...part } : line)),
    });
  return (
    <div class="stack">
      {lines.map(({ name, pct }, place) => (
        <div class="row study-term-line" key={place}>
          <TextField label={words.lineName} value={name} onInput={(text) => put(place, { name: text })} />
          <TextField
            label={words.linePct}
            value={pct}
            mode="decimal"
            narrow
            onInput={(text) => put(place, { pct: text })}
          />
        </div>
      ))}
      <div class="row study-terms">
        {lines.length === 0 ? (
          <TextField
            label={words.allowance}
            value={terms.allowance}
            mode="decimal"
            narrow
            onInput={(allowance) => onChange({ ...terms, allowance })}
          />
        ) : (
          <p class="field">
            <span>{words.allowance}</span>
            <strong class="number study-term-sum">{sum ?? study.none}</strong>
          </p>
        )}
        <ChoiceRow
          label={words.basis}
          options={bases}
          value={terms.basis}
          onChoose={(basis) => onChange({ ...terms, basis })}
        />
        <TextField
          label={words.machineAllowance}
          value={terms.machineAllowance}
          mode="decimal"
          narrow
          onInput={(machineAllowance) => onChange({ ...terms, machineAllowance })}
        />
      </div>
      <div>
        <button
          type="button"
          class="button plain"
          onClick={() =>
            onChange({
              ...terms,
              lines: lines.length === 0 ? splitLines(terms.allowance) : [...lines, { name: '', pct: '' }],
            })
          }
        >
          {lines.length === 0 ? words.lineByLine : words.anotherLine}
        </button>
      </div>
    </div>
  );
}

/** A sum that was given is not lost: it stands as a line until it is split. */
function splitLines(allowance: string): TermsDraft['lines'] {
  const lines = words.usualLines.map((name) => ({ name, pct: '' }));
  const isNothing = allowance.trim() === '' || allowance.trim() === '0';
  return isNothing ? lines : [...lines, { name: words.notSplit, pct: allowance }];
}
