import { addPerson } from '../../application/shop/add-person';
import { sizePart } from '../../application/shop/size-part';
import { startStudy } from '../../application/study/start-study';
import type { Stamp } from '../../domain/records/stamp';
import type { MethodRevision, Part } from '../../domain/shop/shop';
import { noAllowances } from '../../domain/study/allowance-terms';
import { nextStart } from '../../domain/study/machine-lane';
import { cycleOrder } from '../../domain/study/study';
import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';
import { keptDraft } from './kept-draft';
import { LiveElementSheet } from './live-element-sheet';
import { MachineSurface } from './machine-surface';
import { momentWords } from './moment-words';
import { ObserveActions } from './observe-actions';
import { ObserveFrame } from './observe-frame';
import { RatingPad } from './rating-pad';
import { lanesOfDraft, planOf, type StudyDraft } from './study-draft';
import { termsOf } from './terms-draft';
import { WatchHead } from './watch-head';

const words = study.observe;

interface Props {
  readonly draft: StudyDraft;
  readonly part: Part;
  readonly method: MethodRevision;
  readonly onBack: () => void;
}

/** The watch before it runs: everything is where it will be, and the first tap starts it. */
export function ReadyToStart({ draft, part, method, onBack }: Props) {
  const app = useApp();
  const { bench, go, isReadOnly } = app;
  const { elements } = method;
  const first = elements[cycleOrder(elements)[0] ?? -1];

  const isTwoLanes = lanesOfDraft(draft) === 2;
  const start = (at: Stamp) => {
    keptDraft.drop(app);
    const plan = planOf(draft);
    // Whoever is timed is known at the station too.
    addPerson(bench, draft.operator);
    if (plan.sizes) sizePart(bench, part.id, plan.sizes);
    const id = startStudy(
      bench,
      {
        title: `${part.code} ${momentWords(at)}`,
        part: part.id,
        partCode: part.code,
        methodRevision: method.revision,
        elements,
        partsPerCycle: method.partsPerCycle,
        conditions: method.conditions,
        operator: draft.operator.trim(),
        observer: draft.observer.trim(),
        personTold: draft.told,
        terms: termsOf(draft.terms) ?? noAllowances,
        timing: draft.timing,
        lanes: isTwoLanes ? 2 : 1,
        ...plan,
      },
      at,
    );
    go('study', id);
  };

  return (
    <ObserveFrame
      title={words.ready(part.code)}
      head={<WatchHead study={null} isSnapback={draft.timing === 'snapback'} />}
      sheet={<LiveElementSheet elements={elements} readings={[]} watch={null} lanes={1} acts={null} />}
      pad={
        <RatingPad
          judged={first ? { element: first.name, ratingPct: 100, isEnded: false, isCarried: false } : null}
          lock={null}
          disabled
          onRate={() => {}}
          onSwitch={null}
        />
      }
      actions={<ObserveActions watch={null} isSnapback={draft.timing === 'snapback'} onRemark={() => {}} />}
      surface={
        <>
          <TimingButton class="study-surface" disabled={isReadOnly} onTap={start}>
            <span class="study-surface-edge" />
            <strong class="study-surface-name">{words.start}</strong>
            <span class="study-surface-point">{words.startWhen(first?.name ?? '')}</span>
            <span class="study-surface-edge" />
          </TimingButton>
          {isTwoLanes && (
            <MachineSurface
              running={null}
              starter={elements[nextStart({ elements, lanes: 2 }, -1) ?? -1]?.name ?? ''}
              shortRun={null}
              disabled
              onTap={() => {}}
            />
          )}
        </>
      }
      ends={
        <button type="button" class="button" onClick={onBack}>
          {words.backToPreparation}
        </button>
      }
    />
  );
}
