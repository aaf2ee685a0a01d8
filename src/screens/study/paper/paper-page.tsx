import '../observe-frame.css';
import './paper.css';
import { useState } from 'preact/hooks';
import type { Part } from '../../../domain/shop/shop';
import { study } from '../../../i18n/en/study';
import { studyPaper as words } from '../../../i18n/en/study-paper';
import { studySheet } from '../../../i18n/en/study-sheet';
import { studyStandard } from '../../../i18n/en/study-standard';
import { useApp } from '../../app';
import { termsInForce, termsOfLast } from '../carried-terms';
import { ChoiceRow } from '../choice-row';
import { SizeFields } from '../size-fields';
import { driversOf, sizesOf } from '../study-draft';
import { termsOf } from '../terms-draft';
import { TermsFields } from '../terms-fields';
import { TermsSource } from '../terms-source';
import { TextField } from '../text-field';
import { keptPaper, type PaperDraft } from './paper-draft';
import { PaperEntry } from './paper-entry';

/** A study that was timed on paper: what stands at its head, then its cells. */
export function PaperPage() {
  const app = useApp();
  const { bench, go, isReadOnly } = app;
  const [draft, setDraft] = useState<PaperDraft>(() => keptPaper.of(app));
  const [fault, setFault] = useState('');
  const change = (part: Partial<PaperDraft>) => {
    setDraft((now) => {
      const changed = { ...now, ...part };
      keptPaper.keep(app, changed);
      return changed;
    });
    setFault('');
  };
  /** A study of a part begins with the allowances in force, as one that is timed does. */
  const choose = async (chosen: Part) => {
    const { id } = chosen;
    change({ part: id, sizes: {} });
    const carried = (await termsInForce(bench, chosen)) ?? termsOfLast(bench.study.peek());
    setDraft((now) => {
      if (!carried || now.part !== id || now.terms !== draft.terms) return now;
      const known = { ...now, ...carried };
      keptPaper.keep(app, known);
      return known;
    });
  };
  const parts = bench.shop.value.parts.filter(({ retired, methods }) => !retired && methods.length > 0);
  const part = parts.find(({ id }) => id === draft.part);
  const method = part?.methods.at(-1);
  const drivers = driversOf(method?.elements ?? []);

  if (draft.isTyping && part && method) {
    return <PaperEntry draft={draft} part={part} method={method} onChange={change} />;
  }
  const begin = () => {
    if (!part || draft.title.trim() === '' || draft.day === '') setFault(words.missing);
    else if (sizesOf(drivers, draft.sizes).length < drivers.length) setFault(study.faults.sizes);
    else if (termsOf(draft.terms) === null) setFault(study.faults.allowances);
    else change({ isTyping: true });
  };
  return (
    <div class="page study-prepare">
      <div class="row spread">
        <h1>{words.title}</h1>
        <button type="button" class="button" onClick={() => go('study')}>
          {studyStandard.back}
        </button>
      </div>
      <div class="row">
        <p>{parts.length === 0 ? words.noMethod : words.intro}</p>
        <button
          type="button"
          class="button"
          onClick={() => {
            // The way back is shown to whoever has begun here.
            change({});
            go('study', 'new');
          }}
        >
          {words.writeMethod}
        </button>
      </div>
      {parts.length > 0 && (
        <>
          <div class="choices">
            {parts.map((one) => (
              <button
                key={one.id}
                type="button"
                class="choice"
                aria-pressed={one.id === draft.part}
                onClick={() => choose(one)}
              >
                {one.code}
              </button>
            ))}
          </div>
          <div class="study-people">
            <TextField label={words.name} value={draft.title} onInput={(title) => change({ title })} />
            <label class="field">
              <span>{words.day}</span>
              <input
                type="date"
                value={draft.day}
                onInput={(event) => change({ day: event.currentTarget.value })}
              />
            </label>
            <TextField
              label={study.prepare.operator}
              value={draft.operator}
              onInput={(operator) => change({ operator })}
            />
            <TextField
              label={study.prepare.observer}
              value={draft.observer}
              onInput={(observer) => change({ observer })}
            />
            {part && (
              <SizeFields
                part={part.id}
                drivers={drivers}
                sizes={draft.sizes}
                onChange={(sizes) => change({ sizes })}
              />
            )}
          </div>
          <div class="row study-terms">
            <ChoiceRow
              label={words.unit}
              options={{ min: studySheet.units.min, s: studySheet.units.s }}
              value={draft.unit}
              onChoose={(unit) => change({ unit })}
            />
            <ChoiceRow
              label={words.reads}
              options={words.readings}
              value={draft.reads}
              onChoose={(reads) => change({ reads })}
            />
          </div>
          <section class="stack" aria-labelledby="paper-terms">
            <h2 id="paper-terms">{study.prepare.allowances}</h2>
            <TermsSource from={draft.termsFrom} />
            <TermsFields terms={draft.terms} onChange={(terms) => change({ terms, termsFrom: null })} />
          </section>
          {fault !== '' && (
            <p class="fault" role="alert">
              {fault}
            </p>
          )}
          <div>
            <button type="button" class="button strong study-ready" disabled={isReadOnly} onClick={begin}>
              {words.begin}
            </button>
          </div>
        </>
      )}
    </div>
  );
}
