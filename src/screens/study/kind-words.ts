import type { ElementDefinition } from '../../domain/shop/element-definition';
import { study } from '../../i18n/en/study';

/** What kind of element it is, as far as it is not the usual: manual work of every cycle while no machine runs. */
export function kindWords({
  elementClass,
  work,
  placement,
}: Pick<ElementDefinition, 'elementClass' | 'work' | 'placement'>): string {
  const said = elementClass === 'repetitive' ? [] : [study.classes[elementClass]];
  said.push(study.works[work]);
  const isInRun = work !== 'machine' && elementClass === 'repetitive' && placement === 'internal';
  if (isInRun) said.push(study.whileItRuns);
  return said.join(', ');
}
