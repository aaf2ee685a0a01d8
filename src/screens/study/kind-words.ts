import type { ElementDefinition } from '../../domain/shop/element-definition';
import { study } from '../../i18n/en/study';

/** What kind of element it is, as far as it is not the usual: manual work of every cycle. */
export function kindWords({
  elementClass,
  work,
  placement,
}: Pick<ElementDefinition, 'elementClass' | 'work' | 'placement'>): string {
  const said = elementClass === 'repetitive' ? [] : [study.classes[elementClass]];
  said.push(study.works[work]);
  if (work !== 'machine' && elementClass === 'repetitive') said.push(study.placements[placement]);
  return said.join(', ');
}
