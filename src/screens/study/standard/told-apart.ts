import type { StudyOfPart } from '../../../application/study/read-studies-of-part';
import { begunWords } from '../moment-words';

/** The day of a study; where another of them is of the same person and day, the moment at which it was begun. */
export function toldApart(one: StudyOfPart, all: readonly StudyOfPart[]): string {
  const { operator, day, study } = one;
  const isAlone = all.filter((other) => other.operator === operator && other.day === day).length === 1;
  return isAlone ? day : begunWords(study);
}
