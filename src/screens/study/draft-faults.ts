import { study } from '../../i18n/en/study';
import { conditionsOf } from './conditions';
import { driversOf, elementsOf, type StudyDraft, sizesOf, wholeOf } from './study-draft';
import { termsOf } from './terms-draft';

const words = study.faults;

/** What the method still lacks, each in a sentence. */
export function methodFaults(draft: StudyDraft): string[] {
  const elements = elementsOf(draft.elements);
  const faults: string[] = [];
  if (elements.length === 0) return [words.elements];
  const seen = new Set<string>();
  for (const [index, { name, elementClass, unitsPerOccurrence }] of elements.entries()) {
    if (name === '') faults.push(words.unnamed(index + 1));
    else if (seen.has(name)) faults.push(words.twice(name));
    else if (elementClass === 'occasional' && unitsPerOccurrence < 1) faults.push(words.units(name));
    seen.add(name);
  }
  if (!elements.some(({ elementClass }) => elementClass === 'repetitive')) faults.push(words.repetitive);
  if (wholeOf(draft.partsPerCycle) < 1) faults.push(words.partsPerCycle);
  for (const { name, value } of conditionsOf(draft.conditions)) {
    if (value === '') faults.push(words.condition(name));
  }
  return faults;
}

/** What a study still lacks before its first tap. */
export function draftFaults(draft: StudyDraft): string[] {
  if (draft.part === '') return [words.part];
  const faults = methodFaults(draft);
  if (draft.operator.trim() === '') faults.push(words.operator);
  if (draft.observer.trim() === '') faults.push(words.observer);
  if (termsOf(draft.terms) === null) faults.push(words.allowances);
  const drivers = driversOf(draft.elements);
  if (sizesOf(drivers, draft.sizes).length < drivers.length) faults.push(words.sizes);
  if (draft.plannedCycles.trim() !== '' && wholeOf(draft.plannedCycles) < 1) faults.push(words.plannedCycles);
  if (draft.purpose === '') faults.push(words.purpose);
  if (!draft.told) faults.push(words.told);
  return faults;
}

/** Elements that nobody has said yet when they end: two people would end them at two instants. */
export function withoutBreakPoint(draft: StudyDraft): string[] {
  return elementsOf(draft.elements).flatMap(({ name, breakPoint }) => (breakPoint === '' ? [name] : []));
}
