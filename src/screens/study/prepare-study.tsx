import { useState } from 'preact/hooks';
import { reviseMethod } from '../../application/shop/revise-method';
import { hasTwoLanes } from '../../domain/study/study';
import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import { useLatch } from '../latch/use-latch';
import { ChoiceRow } from './choice-row';
import { draftFaults } from './draft-faults';
import { keptDraft } from './kept-draft';
import { KeyTeaching } from './key-teaching';
import { MethodSection } from './method-section';
import { PartChooser } from './part-chooser';
import { PeopleFields } from './people-fields';
import { ReadyToStart } from './ready-to-start';
import {
  draftOfMethod,
  elementsOf,
  emptyStudyDraft,
  isRevised,
  type StudyDraft,
  wholeOf,
} from './study-draft';
import { TermsFields } from './terms-fields';

const words = study.prepare;

/** Everything a study needs before its first tap, on one sheet; then the watch. */
export function PrepareStudy() {
  const app = useApp();
  const { bench, go, isReadOnly } = app;
  const isShut = useLatch();
  const [draft, setDraft] = useState(
    () => keptDraft.of(app) ?? emptyStudyDraft(bench.study.peek()?.heading ?? null),
  );
  const [isReady, setIsReady] = useState(false);
  const [faults, setFaults] = useState<string[]>([]);
  const part = bench.shop.value.parts.find(({ id }) => id === draft.part);
  const method = part?.methods.at(-1);

  const change = (changes: Partial<StudyDraft>) => {
    const changed = { ...draft, ...changes };
    setDraft(changed);
    keptDraft.keep(app, changed);
    setFaults([]);
  };
  const choosePart = (id: string) => {
    const chosen = bench.shop.value.parts.find((other) => other.id === id);
    change({ part: id, ...draftOfMethod(chosen?.methods.at(-1)) });
  };
  const keepMethod = () => {
    if (!isRevised(draft, method)) return;
    reviseMethod(bench, draft.part, elementsOf(draft.elements), {
      partsPerCycle: wholeOf(draft.partsPerCycle),
      conditions: draft.conditions.trim(),
    });
  };
  const toTheWatch = () => {
    const found = draftFaults(draft);
    setFaults(found);
    if (found.length > 0) return;
    keepMethod();
    setIsReady(true);
  };

  if (isReady && part && method) {
    return <ReadyToStart draft={draft} part={part} method={method} onBack={() => setIsReady(false)} />;
  }
  return (
    <div class="page study-prepare">
      <div class="row spread">
        <h1>{words.title}</h1>
        <button type="button" class="button" onClick={() => go('study')}>
          {words.back}
        </button>
      </div>
      <section class="stack" aria-labelledby="study-part">
        <h2 id="study-part">{words.part}</h2>
        <PartChooser part={draft.part} onChoose={choosePart} />
      </section>
      {part && (
        <>
          <MethodSection draft={draft} part={part} onChange={change} onKeep={keepMethod} />
          <section class="stack" aria-labelledby="study-people">
            <h2 id="study-people">{words.people}</h2>
            <PeopleFields draft={draft} onChange={change} />
          </section>
          <section class="stack" aria-labelledby="study-terms">
            <h2 id="study-terms">{words.allowances}</h2>
            <TermsFields terms={draft.terms} onChange={(terms) => change({ terms })} />
          </section>
          <section class="stack" aria-labelledby="study-watch">
            <h2 id="study-watch">{words.watch}</h2>
            <div class="row study-terms">
              <ChoiceRow
                label={words.timing}
                options={words.timings}
                value={draft.timing}
                onChoose={(timing) => change({ timing })}
              />
              {hasTwoLanes(elementsOf(draft.elements)) && (
                <ChoiceRow
                  label={words.lanes}
                  options={words.lanesOf}
                  value={draft.lanes}
                  onChoose={(lanes) => change({ lanes })}
                />
              )}
            </div>
            <div class="row">
              <KeyTeaching acts={draft.lanes === '2' ? ['surface', 'machine'] : ['surface']} />
              <p class="quiet small">{words.keysNote}</p>
            </div>
          </section>
          <section class="stack" aria-labelledby="study-before">
            <h2 id="study-before">{words.before}</h2>
            <ul class="study-cautions">
              {words.cautions.map((caution) => (
                <li key={caution}>{caution}</li>
              ))}
            </ul>
            <label class="study-told">
              <input
                type="checkbox"
                checked={draft.told}
                onChange={(event) => change({ told: event.currentTarget.checked })}
              />
              <span>{words.told}</span>
            </label>
            {faults.length > 0 && (
              <div class="fault" role="alert">
                <p>{words.missing}</p>
                <ul>
                  {faults.map((fault) => (
                    <li key={fault}>{fault}</li>
                  ))}
                </ul>
              </div>
            )}
            <div>
              <button
                type="button"
                class="button strong study-ready"
                disabled={isReadOnly || (isShut && isRevised(draft, method))}
                onClick={toTheWatch}
              >
                {words.ready}
              </button>
            </div>
          </section>
        </>
      )}
    </div>
  );
}
