import { useState } from 'preact/hooks';
import { importStudies } from '../../../application/study/import-studies';
import type { MethodRevision, Part } from '../../../domain/shop/shop';
import { noAllowances } from '../../../domain/study/allowance-terms';
import { exclusionCauses } from '../../../domain/study/exclusion-cause';
import { type PaperFault, paperRows } from '../../../domain/study/paper-study';
import { study } from '../../../i18n/en/study';
import { studyPaper as words } from '../../../i18n/en/study-paper';
import { useApp } from '../../app';
import { causeWords } from '../cause-words';
import { driversOf, sizesOf } from '../study-draft';
import { termsOf } from '../terms-draft';
import { NumberPad } from './number-pad';
import {
  asTypedTime,
  carriedRating,
  cellKey,
  cellsOf,
  emptyCell,
  keptPaper,
  linesOf,
  type PaperDraft,
  type TypedCell,
  typedMs,
} from './paper-draft';
import { paperQuestions } from './paper-questions';
import { PaperSheet } from './paper-sheet';
import { typeSign } from './type-sign';

interface Props {
  readonly draft: PaperDraft;
  readonly part: Part;
  readonly method: MethodRevision;
  readonly onChange: (part: Partial<PaperDraft>) => void;
}

/** One cell after the other, on a pad of numbers; where one stands is always marked. */
export function PaperEntry({ draft, part, method, onChange }: Props) {
  const app = useApp();
  const [field, setField] = useState<'time' | 'rating'>('time');
  const [isComeBackTo, setIsComeBackTo] = useState(true);
  const [faults, setFaults] = useState<readonly string[]>([]);
  const [questions, setQuestions] = useState<readonly string[]>([]);
  const { elements, partsPerCycle } = method;
  const lines = linesOf(elements, draft.reads);
  const elementIndex = lines[draft.place] ?? lines[0]!;
  const element = elements[elementIndex]!;
  const isMachine = element.work === 'machine';
  const key = cellKey(draft.cycle, elementIndex);
  const cell = draft.cells[key] ?? emptyCell;
  const next = elements[lines[(draft.place + 1) % lines.length]!]!;

  const say = (found: readonly string[]) => {
    setFaults(found);
    setQuestions([]);
  };
  const put = (change: Partial<TypedCell>) => {
    say([]);
    onChange({ cells: { ...draft.cells, [key]: { ...cell, ...change } } });
  };
  const turnTo = (name: 'time' | 'rating') => {
    setField(name);
    setIsComeBackTo(true);
  };
  const stand = (place: number, cycle: number) => {
    turnTo('time');
    say([]);
    onChange({ place, cycle });
  };
  const goOn = () => {
    if (cell.time !== '' && typedMs(cell.time, draft.unit) === null) {
      say([words.notNumber]);
      return;
    }
    const isLast = draft.place === lines.length - 1;
    stand(isLast ? 0 : draft.place + 1, isLast ? draft.cycle + 1 : draft.cycle);
  };
  const goBack = () => {
    const isFirst = draft.place === 0;
    if (!isFirst || draft.cycle > 1) {
      stand(isFirst ? lines.length - 1 : draft.place - 1, isFirst ? draft.cycle - 1 : draft.cycle);
    }
  };
  const type = (sign: string) => {
    setIsComeBackTo(false);
    put({ [field]: typeSign(cell[field], sign, isComeBackTo), isMissed: false });
  };
  const keep = (isAsked: boolean) => {
    const cells = cellsOf(draft, elements);
    const {
      rows,
      filledIn,
      faults: found,
    } = paperRows(
      {
        title: draft.title.trim(),
        elements,
        partsPerCycle,
        terms: termsOf(draft.terms) ?? noAllowances,
        reads: draft.reads,
        carried: {
          ...Object.fromEntries(
            sizesOf(driversOf(elements), draft.sizes).map(({ driver, value }) => [driver, String(value)]),
          ),
          part: part.code,
          operator: draft.operator.trim(),
          observer: draft.observer.trim(),
          method_revision: String(method.revision),
          conditions: method.conditions,
          started_at: draft.day,
          note: '',
        },
      },
      cells,
    );
    say(found.map((fault) => faultWords(fault, draft.unit)));
    if (found.length > 0) return;
    const open = isAsked ? [] : paperQuestions(draft, elements, cells);
    setQuestions(open);
    if (open.length > 0) return;
    const [id] = importStudies(app.bench, words.source, rows, elements, filledIn);
    keptPaper.drop(app);
    app.go('study', id);
  };

  return (
    <div class="study-type">
      <h1 class="visually-hidden">{words.title}</h1>
      <div class="study-type-sheet">
        <PaperSheet
          draft={draft}
          elements={elements}
          lines={lines}
          onStand={(place) => stand(place, draft.cycle)}
        />
      </div>
      <div class="study-type-cell">
        <p role="status">
          {words.cycle(draft.cycle)}
          <strong>
            {elementIndex + 1} {element.name}
          </strong>
        </p>
        <div class="choices">
          {(['time', 'rating'] as const).map((name) => (
            <button
              key={name}
              type="button"
              class="choice study-type-field"
              aria-pressed={field === name}
              disabled={name === 'rating' && isMachine}
              onClick={() => turnTo(name)}
            >
              <span class="small">
                {name === 'time' ? words.value : isMachine ? study.observe.machineLock : words.rating}
              </span>
              <strong class="number">
                {name === 'time'
                  ? cell.time || study.none
                  : !isMachine && (cell.rating || `(${carriedRating(draft, draft.cycle, elementIndex)})`)}
              </strong>
            </button>
          ))}
          <button
            type="button"
            class="choice"
            aria-pressed={cell.isMissed}
            onClick={() => put({ isMissed: !cell.isMissed, time: '' })}
          >
            {words.missed}
          </button>
          <label class="field">
            <span>{words.because}</span>
            <select value={cell.cause} onChange={(event) => put({ cause: event.currentTarget.value })}>
              <option value="">{words.none}</option>
              {exclusionCauses.map((cause) => (
                <option key={cause} value={cause}>
                  {causeWords(cause)}
                </option>
              ))}
            </select>
          </label>
        </div>
        {questions.length > 0 && (
          <div class="fault study-type-questions" role="alert">
            {questions.map((question) => (
              <p key={question}>{question}</p>
            ))}
            <div class="row">
              <button type="button" class="button strong" onClick={() => setQuestions([])}>
                {words.questions.goOn}
              </button>
              <button type="button" class="button" onClick={() => keep(true)}>
                {words.questions.keepSo}
              </button>
            </div>
          </div>
        )}
        {faults.length > 0 && (
          <ul class="fault" role="alert">
            {faults.map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
          </ul>
        )}
      </div>
      <NumberPad onType={type} onNext={goOn} onBack={goBack} next={words.nextIs(next.name)} />
      <div class="row study-type-ends">
        <button type="button" class="button" onClick={() => onChange({ isTyping: false })}>
          {words.stop}
        </button>
        <button type="button" class="button strong" onClick={() => keep(false)}>
          {words.keep}
        </button>
      </div>
    </div>
  );
}

function faultWords(fault: PaperFault, unit: PaperDraft['unit']): string {
  if (fault.why === 'nothing') return words.faults.nothing();
  if (fault.why !== 'watch-backwards') return words.faults[fault.why](fault.element, fault.cycle);
  const { element, cycle, ms, beforeMs } = fault;
  return words.faults[fault.why](element, cycle, asTypedTime(ms, unit), asTypedTime(beforeMs, unit));
}
