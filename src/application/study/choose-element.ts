import { lanesOf } from '../../domain/study/machine-lane';
import type { Bench } from '../bench';

/**
 * Says that another element is in hand than the next of the method: what was tapped last began this one.
 *
 * @throws {RangeError} chooseElement requires an element that comes in every cycle, of the operator's lane
 */
export function chooseElement(bench: Bench, elementNo: number): void {
  const study = bench.study.value;
  if (study?.status !== 'open' || !study.heading || study.watch.aside) return;
  if (!lanesOf(study.heading).order.includes(elementNo - 1)) {
    throw new RangeError(
      "chooseElement requires an element that comes in every cycle, of the operator's lane",
    );
  }
  if (study.watch.elementIndex === elementNo - 1) return;
  bench.record(study.id, [{ kind: 'element-chosen', elementNo }]);
}
