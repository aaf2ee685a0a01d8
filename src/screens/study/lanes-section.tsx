import type { ElementDefinition } from '../../domain/shop/element-definition';
import { nextStart } from '../../domain/study/machine-lane';
import { cycleOrder, hasWorkInRun } from '../../domain/study/study';
import { study } from '../../i18n/en/study';
import { ChoiceRow } from './choice-row';

const words = study.prepare;

interface Props {
  readonly elements: readonly ElementDefinition[];
  readonly lanes: 1 | 2;
  readonly onChoose: (lanes: '1' | '2') => void;
}

/** Of a method with a machine: whether both are timed at once, what that asks of the hand, what the other way costs. */
export function LanesSection({ elements, lanes, onChoose }: Props) {
  const starter = elements[nextStart({ elements, lanes: 2 }, -1) ?? -1]?.name ?? '';
  return (
    <section class="stack" aria-labelledby="study-lanes">
      <h2 id="study-lanes">{words.lanesTitle}</h2>
      <ChoiceRow
        label={words.lanes}
        options={words.lanesOf}
        value={lanes === 2 ? '2' : '1'}
        onChoose={onChoose}
      />
      {lanes === 2 && <p class="quiet">{words.twoPlaces(starter)}</p>}
      {lanes === 1 && hasWorkInRun(elements) && (
        <p class="fault" role="status">
          {words.oneLane(study.and(namesOf(elements, 'internal')), study.and(namesOf(elements, 'machine')))}
        </p>
      )}
    </section>
  );
}

function namesOf(elements: readonly ElementDefinition[], wanted: 'internal' | 'machine'): string[] {
  return cycleOrder(elements).flatMap((index) => {
    const { name, work, placement } = elements[index]!;
    const isWanted = wanted === 'machine' ? work === 'machine' : work !== 'machine' && placement === wanted;
    return isWanted ? [name] : [];
  });
}
