import { useState } from 'preact/hooks';
import { setCell } from '../../application/cell/cell-settings';
import type { CellSettings } from '../../domain/records/shop-fact';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { formatNumber } from '../../i18n/format-number';
import { useApp } from '../app';
import { LotSteppers } from './change-controls';
import type { ReckonedPart } from './reckon-parts';
import { Stepper } from './stepper';
import type { CellData } from './use-cell';

/** What the shop says about the cell beside its studies: lots, demand, which elements add value, who does what. */
export function CellSettingsForm({ cell, parts }: { cell: CellData; parts: readonly ReckonedPart[] }) {
  const { bench } = useApp();
  const [draft, setDraft] = useState<CellSettings>(cell.settings);
  const set = (to: Partial<CellSettings>) => setDraft({ ...draft, ...to });
  const elements = parts.flatMap(({ work }) => work.elements);
  const names = [...new Set(elements.map(({ name }) => name))];
  const hands = names.filter((name) => !elements.some((own) => own.name === name && own.place === 'machine'));
  const isSame = JSON.stringify(draft) === JSON.stringify(cell.settings);
  const toggle = (list: readonly string[], name: string) =>
    list.includes(name) ? list.filter((other) => other !== name) : [...list, name];
  return (
    <details class="cell-how">
      <summary>{says.settings}</summary>
      <div class="stack">
        <LotSteppers sizes={draft} change={set} />
        <Stepper
          label={says.demand}
          value={draft.partsPerDay ?? 0}
          low={0}
          high={10_000}
          step={4}
          text={(value) => (value > 0 ? formatNumber(value) : says.noDemand)}
          change={(value) => set({ partsPerDay: value > 0 ? value : null })}
        />
        <Names
          label={says.valueAdding}
          names={names}
          chosen={draft.valueAdding}
          toggle={(name) => set({ valueAdding: toggle(draft.valueAdding, name) })}
        />
        <Names
          label={says.byOther}
          names={hands}
          chosen={draft.byOther}
          toggle={(name) => set({ byOther: toggle(draft.byOther, name) })}
        />
        <label class="field">
          <span>{says.putDown}</span>
          <select
            value={draft.putDownWith}
            onChange={(event) => set({ putDownWith: event.currentTarget.value })}
          >
            <option value="">{says.lastOfAll}</option>
            {hands.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        </label>
        <div class="row">
          <button type="button" class="button strong" disabled={isSame} onClick={() => setCell(bench, draft)}>
            {says.set}
          </button>
        </div>
      </div>
    </details>
  );
}

interface NamesProps {
  readonly label: string;
  readonly names: readonly string[];
  readonly chosen: readonly string[];
  readonly toggle: (name: string) => void;
}

function Names({ label, names, chosen, toggle }: NamesProps) {
  if (names.length === 0) return null;
  return (
    <fieldset class="choices">
      <legend>{label}</legend>
      {names.map((name) => (
        <button
          key={name}
          type="button"
          class="choice"
          aria-pressed={chosen.includes(name)}
          onClick={() => toggle(name)}
        >
          {name}
        </button>
      ))}
    </fieldset>
  );
}
