import type { StudyRow } from '../../domain/study/study-row';
import { study } from '../../i18n/en/study';
import { causeWords } from './cause-words';
import { elementWords } from './element-words';
import { timeWords } from './time-words';

const words = study.observe;

/** What was read last: its time with its rating, or why it is left out, which nobody rates. */
export function lastReadingWords(row: StudyRow): string {
  const { elementClass, work, observedMs, ratingPct, excluded } = row;
  const element = elementWords(row);
  if (observedMs === null) return words.lastMissed(element);
  const time = timeWords.min.reading(observedMs);
  if (excluded !== null) return `${words.lastUnrated(element, time)}; ${causeWords(excluded)}`;
  const isRated = elementClass !== 'foreign' && work !== 'machine';
  return isRated ? words.last(element, time, String(ratingPct)) : words.lastUnrated(element, time);
}
