import { useEffect, useRef, useState } from 'preact/hooks';
import { reviseMethod } from '../../application/shop/revise-method';
import { isMethodUnused } from '../../application/study/is-method-unused';
import { hasTwoLanes } from '../../domain/study/study';
import { study } from '../../i18n/en/study';
import { studyPaper } from '../../i18n/en/study-paper';
import { studySheet } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import { useLatch } from '../latch/use-latch';
import { StorageCautions } from '../shell/storage-cautions';
import { termsInForce } from './carried-terms';
import { ChoiceRow } from './choice-row';
import { draftFaults, withoutBreakPoint } from './draft-faults';
import { FoldedSection } from './folded-section';
import { keptDraft } from './kept-draft';
import { keptLanes } from './kept-lanes';
import { KeyTeaching } from './key-teaching';
import { LanesSection } from './lanes-section';
import { MethodSection } from './method-section';
import { keptPaper } from './paper/paper-draft';
import { PartChooser } from './part-chooser';
import { PeopleFields } from './people-fields';
import { PutAway } from './put-away';
import { ReadyToStart } from './ready-to-start';
import {
  draftOfMethod,
  elementsOf,
  emptyStudyDraft,
  isRevised,
  lanesOfDraft,
  type StudyDraft,
  wholeOf,
} from './study-draft';
import { PAPER_STUDY } from './study-places';
import { TermsFields } from './terms-fields';
import { TermsSource } from './terms-source';
import { TextField } from './text-field';

const words = study.prepare;

/**
 * Everything a study needs before its first tap, on one sheet; then the watch.
 *
 * @param wanted the part that somebody came to prepare a study of; empty where none was said
 */
export function PrepareStudy({ wanted }: { wanted: string }) {
  const app = useApp();
  const { bench, go, isReadOnly } = app;
  const isShut = useLatch();
  const [draft, setDraft] = useState(() => keptDraft.of(app) ?? emptyStudyDraft(bench.study.peek()));
  const [isReady, setIsReady] = useState(false);
  /** How often something was missing on the way to the watch. */
  const [tries, setTries] = useState(0);
  const [isAskedForPoints, setIsAskedForPoints] = useState(false);
  const [isInPlace, setIsInPlace] = useState(false);
  const foot = useRef<HTMLDivElement>(null);
  const part = bench.shop.value.parts.find(({ id }) => id === draft.part);
  const method = part?.methods.at(-1);

  const change = (changes: Partial<StudyDraft>) => {
    setDraft((now) => {
      const changed = { ...now, ...changes };
      keptDraft.keep(app, changed);
      return changed;
    });
    setIsAskedForPoints(false);
  };
  const faults = tries > 0 ? draftFaults(draft) : [];
  // What is missing, and the button under it, are in view at once.
  useEffect(() => {
    if (tries > 0) foot.current?.scrollIntoView({ block: 'nearest' });
  }, [tries]);
  useEffect(() => {
    setIsInPlace(false);
    if (!part) return;
    let isCurrent = true;
    isMethodUnused(bench, part).then((isUnused) => isCurrent && setIsInPlace(isUnused));
    return () => {
      isCurrent = false;
    };
  }, [bench, part]);
  const choosePart = (id: string) => {
    const chosen = bench.shop.value.parts.find((other) => other.id === id);
    const { elements: written, partsPerCycle, conditions } = draft;
    // A method that was written and not kept waits for whoever comes back to its part.
    const left = isRevised(draft, method)
      ? { ...draft.left, [draft.part]: { elements: written, partsPerCycle, conditions } }
      : draft.left;
    change({
      part: id,
      ...(left[id] ?? draftOfMethod(chosen?.methods.at(-1))),
      left,
      sizes: {},
      chosenLanes: keptLanes.of(app, id),
    });
    // A study of a part with a standard begins with the allowances in force, unless others were typed meanwhile.
    if (!chosen) return;
    termsInForce(bench, chosen).then((inForce) => {
      setDraft((now) => {
        if (!inForce || now.part !== id || now.terms !== draft.terms) return now;
        const known = { ...now, ...inForce };
        keptDraft.keep(app, known);
        return known;
      });
    });
  };
  // What is in preparation already is not lost to another part that somebody came for.
  useEffect(() => {
    if (draft.part === '' && bench.shop.peek().parts.some(({ id }) => id === wanted)) choosePart(wanted);
  }, []);
  const other = bench.shop.value.parts.find(({ id }) => id === wanted && part && id !== part.id);
  const elements = elementsOf(draft.elements);
  const lanes = lanesOfDraft(draft);
  const chooseLanes = (chosenLanes: '1' | '2') => {
    keptLanes.keep(app, draft.part, chosenLanes);
    change({ chosenLanes });
  };
  const keepMethod = () => {
    if (!isRevised(draft, method)) return;
    reviseMethod(bench, draft.part, elements, {
      partsPerCycle: wholeOf(draft.partsPerCycle),
      conditions: draft.conditions.trim(),
      inPlace: isInPlace,
    });
  };
  const openEnded = withoutBreakPoint(draft);
  const toTheWatch = (isAsked: boolean) => {
    const isWhole = draftFaults(draft).length === 0;
    setTries(tries + 1);
    setIsAskedForPoints(isWhole && openEnded.length > 0);
    if (!isWhole || (openEnded.length > 0 && !isAsked)) return;
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
        {part && <PutAway />}
        {keptPaper.isKept(app) && (
          <button type="button" class="button" onClick={() => go('study', PAPER_STUDY)}>
            {studyPaper.title}
          </button>
        )}
        <button type="button" class="button" onClick={() => go('study')}>
          {words.back}
        </button>
      </div>
      {other && <p class="fault">{words.otherFirst(part!.code, other.code)}</p>}
      <StorageCautions />
      <section class="stack" aria-labelledby="study-part">
        <h2 id="study-part">{words.part}</h2>
        <PartChooser part={draft.part} onChoose={choosePart} />
      </section>
      {part && (
        <>
          <MethodSection
            draft={draft}
            part={part}
            onChange={change}
            onKeep={keepMethod}
            isInPlace={isInPlace}
          />
          {hasTwoLanes(elements) && <LanesSection elements={elements} lanes={lanes} onChoose={chooseLanes} />}
          <section class="stack" aria-labelledby="study-people">
            <h2 id="study-people">{words.people}</h2>
            <PeopleFields draft={draft} onChange={change} />
          </section>
          <section class="stack" aria-labelledby="study-terms">
            <h2 id="study-terms">{words.allowances}</h2>
            <TermsSource from={draft.termsFrom} />
            <TermsFields terms={draft.terms} onChange={(terms) => change({ terms, termsFrom: null })} />
          </section>
          <FoldedSection title={words.plan} summary={planSummary(draft)}>
            <div class="study-method-foot">
              <TextField
                label={words.plannedCycles}
                value={draft.plannedCycles}
                mode="numeric"
                narrow
                onInput={(plannedCycles) => change({ plannedCycles })}
              />
              <TextField
                label={words.planWords}
                value={draft.plan}
                hint={words.planHint}
                onInput={(plan) => change({ plan })}
              />
            </div>
          </FoldedSection>
          <FoldedSection title={words.watch} summary={words.timings[draft.timing]}>
            <ChoiceRow
              label={words.timing}
              options={words.timings}
              value={draft.timing}
              onChoose={(timing) => change({ timing })}
            />
            <div class="row">
              <KeyTeaching acts={lanes === 2 ? ['surface', 'machine'] : ['surface']} />
              <p class="quiet small">{words.keysNote}</p>
            </div>
          </FoldedSection>
          <section class="stack" aria-labelledby="study-before">
            <h2 id="study-before">{words.before}</h2>
            <ul class="study-cautions">
              {words.cautions.map((caution) => (
                <li key={caution}>{caution}</li>
              ))}
            </ul>
            <ChoiceRow
              label={words.purpose}
              options={words.purposes}
              value={draft.purpose}
              onChoose={(purpose) => change({ purpose })}
            />
            <TextField
              label={words.agreement}
              value={draft.agreement}
              hint={words.agreementHint}
              onInput={(agreement) => change({ agreement })}
            />
            <label class="study-told">
              <input
                type="checkbox"
                checked={draft.told}
                onChange={(event) => change({ told: event.currentTarget.checked })}
              />
              <span>{words.told}</span>
            </label>
            <div class="stack" ref={foot}>
              {isAskedForPoints && (
                <div class="fault stack" role="alert">
                  <p>{words.noBreakPoint(study.and(openEnded))}</p>
                  <div>
                    <button type="button" class="button" onClick={() => toTheWatch(true)}>
                      {words.withoutBreakPoint}
                    </button>
                  </div>
                </div>
              )}
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
                  onClick={() => toTheWatch(false)}
                >
                  {words.ready}
                </button>
              </div>
            </div>
          </section>
        </>
      )}
    </div>
  );
}

function planSummary({ plannedCycles, plan }: StudyDraft): string {
  const cycles = plannedCycles.trim() === '' ? '' : studySheet.head.planned(plannedCycles);
  return [cycles, plan].filter((part) => part !== '').join('; ') || words.noPlan;
}
