import type { StudyRow } from '../../domain/study/study-row';
import { FOREIGN_ELEMENT } from '../../domain/study/watch-in-hand';
import { study } from '../../i18n/en/study';

/** The element of a row as it is read: a foreign one that nobody named goes by the word of the language, whatever is kept. */
export function elementWords({ element, elementClass }: Pick<StudyRow, 'element' | 'elementClass'>): string {
  return elementClass === 'foreign' && element.startsWith(FOREIGN_ELEMENT)
    ? study.observe.foreignElement + element.slice(FOREIGN_ELEMENT.length)
    : element;
}
