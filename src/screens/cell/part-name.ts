import { cell as words } from '../../i18n/en/cell';
import type { ReckonedPart } from './reckon-parts';

/** How a part is called; the mix is all of them. */
export function partName({ source, partCode }: Pick<ReckonedPart, 'source' | 'partCode'>): string {
  return source ? partCode || words.noCode : words.allParts;
}
