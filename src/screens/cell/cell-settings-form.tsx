import { useState } from 'preact/hooks';
import { setCell } from '../../application/cell/cell-settings';
import { machineReasons } from '../../domain/cell/cell-days';
import type { CellSettings } from '../../domain/records/shop-fact';
import { cellLeadTime as says } from '../../i18n/en/cell-lead-time';
import { reasonWords } from '../../i18n/en/reasons';
import { useApp } from '../app';
import { LotSteppers } from './change-controls';
import type { ReckonedPart } from './reckon-parts';
import type { CellData } from './use-cell';

/** What the shop says about the cell beside its studies: lots, demand, which elements add value, who does what. */
export function CellSettingsForm({ cell, parts }: { cell: CellData; parts: readonly ReckonedPart[] }) {
  const { bench } = useApp();
  // What was kept elsewhere meanwhile stays.
  const [changed, setChanged] = useState<Partial<CellSettings>>({});
  const draft = { ...cell.settings, ...changed };
  const set = (to: Partial<CellSettings>) => setChanged({ ...changed, ...to });
  const holding = draft.machineReasons ?? machineReasons;
  const reasons = bench.shop.value.reasons.filter(({ category }) => category !== 'planned-break');
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
        <Names
          label={says.holding}
          names={reasons.map(({ id }) => id)}
          chosen={holding}
          nameOf={(id) => reasons.find((own) => own.id === id)?.label || reasonWords[id] || id}
          toggle={(id) => set({ machineReasons: toggle(holding, id) })}
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
  readonly nameOf?: (name: string) => string;
  readonly toggle: (name: string) => void;
}

function Names({ label, names, chosen, nameOf = String, toggle }: NamesProps) {
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
          {nameOf(name)}
        </button>
      ))}
    </fieldset>
  );
}
