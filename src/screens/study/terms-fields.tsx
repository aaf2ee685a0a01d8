import { study } from '../../i18n/en/study';
import { ChoiceRow } from './choice-row';
import type { TermsDraft } from './terms-draft';
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
  return (
    <div class="row study-terms">
      <TextField
        label={words.allowance}
        value={terms.allowance}
        mode="decimal"
        narrow
        onInput={(allowance) => onChange({ ...terms, allowance })}
      />
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
  );
}
