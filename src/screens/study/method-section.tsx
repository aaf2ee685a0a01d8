import { useState } from 'preact/hooks';
import type { Part } from '../../domain/shop/shop';
import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import { PinAsk } from '../latch/pin-ask';
import { useLatch } from '../latch/use-latch';
import { ChoiceRow } from './choice-row';
import { ConditionFields } from './condition-fields';
import { methodFaults } from './draft-faults';
import { MethodSheet } from './method-sheet';
import { SizeFields } from './size-fields';
import { draftOfMethod, driversOf, isRevised, type StudyDraft } from './study-draft';
import { TextField } from './text-field';

const words = study.prepare;

interface Props {
  readonly draft: StudyDraft;
  readonly part: Part;
  readonly onChange: (changes: Partial<StudyDraft>) => void;
  readonly onKeep: () => void;
  /** Nothing was timed under the newest revision: it is written again in its place. */
  readonly isInPlace: boolean;
}

/** The part's latest method. Changed, it becomes another revision; what was studied before keeps its own. */
export function MethodSection({ draft, part, onChange, onKeep, isInPlace }: Props) {
  const { bench, isReadOnly } = useApp();
  const isShut = useLatch();
  const [isTried, setIsTried] = useState(false);
  const method = part.methods.at(-1);
  const others = bench.shop.value.parts.filter(({ id, methods }) => id !== part.id && methods.length > 0);
  const isChanged = isRevised(draft, method);
  const next = (method?.revision ?? 0) + (isInPlace ? 0 : 1);
  const faults = isTried ? methodFaults(draft) : [];
  const keep = () => {
    const isWhole = methodFaults(draft).length === 0;
    setIsTried(!isWhole);
    if (isWhole) onKeep();
  };
  return (
    <section class="stack" aria-labelledby="study-method">
      <div class="row spread">
        <h2 id="study-method">
          {words.method} {part.code}
        </h2>
        <p class="quiet">{method ? words.revision(method.revision) : words.noMethod}</p>
      </div>
      {draft.elements.length === 0 && others.length > 0 && (
        <ChoiceRow<string>
          label={words.takeOver}
          options={Object.fromEntries(others.map(({ id, code }) => [id, code]))}
          value=""
          onChoose={(id) => onChange(draftOfMethod(others.find((other) => other.id === id)?.methods.at(-1)))}
        />
      )}
      <MethodSheet elements={draft.elements} onChange={(elements) => onChange({ elements })} />
      <div class="study-method-foot">
        <TextField
          label={words.partsPerCycle}
          value={draft.partsPerCycle}
          mode="numeric"
          narrow
          onInput={(partsPerCycle) => onChange({ partsPerCycle })}
        />
        <SizeFields
          part={part.id}
          drivers={driversOf(draft.elements)}
          sizes={draft.sizes}
          onChange={(sizes) => onChange({ sizes })}
        />
      </div>
      <ConditionFields conditions={draft.conditions} onChange={(conditions) => onChange({ conditions })} />
      {isChanged && (
        <div class="row">
          <button type="button" class="button" disabled={isReadOnly || isShut} onClick={keep}>
            {words.saveRevision(next)}
          </button>
          <p class="quiet" role="status">
            {isInPlace ? words.changedInPlace(next) : words.changed(next)}
          </p>
        </div>
      )}
      {isChanged && <PinAsk />}
      {isChanged && faults.length > 0 && (
        <ul class="fault" role="alert">
          {faults.map((fault) => (
            <li key={fault}>{fault}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
