import type { StudyHeading } from '../../domain/records/study-fact';
import type {
  ElementClass,
  ElementDefinition,
  Placement,
  WorkKind,
} from '../../domain/shop/element-definition';
import type { MethodRevision } from '../../domain/shop/shop';
import { noAllowances } from '../../domain/study/allowance-terms';
import { draftOfTerms, type TermsDraft } from './terms-draft';

/** An element as it is being written; numbers are still text. */
export interface ElementDraft {
  /** Names the line while it moves. */
  readonly key: number;
  readonly name: string;
  readonly breakPoint: string;
  readonly elementClass: ElementClass;
  readonly units: string;
  readonly work: WorkKind;
  readonly placement: Placement;
}

/** A study as it is being prepared. */
export interface StudyDraft {
  readonly part: string;
  readonly elements: readonly ElementDraft[];
  readonly partsPerCycle: string;
  readonly conditions: string;
  readonly operator: string;
  readonly observer: string;
  readonly terms: TermsDraft;
  readonly told: boolean;
  readonly timing: 'continuous' | 'snapback';
  readonly lanes: '1' | '2';
}

export function emptyStudyDraft(last: StudyHeading | null): StudyDraft {
  return {
    part: '',
    elements: [],
    partsPerCycle: '1',
    conditions: '',
    operator: '',
    observer: last?.observer ?? '',
    terms: draftOfTerms(last?.terms ?? noAllowances),
    told: false,
    timing: 'continuous',
    lanes: '1',
  };
}

/** The lines of a method on the sheet; none for a part without one. */
export function draftOfMethod(
  method: MethodRevision | undefined,
): Pick<StudyDraft, 'elements' | 'partsPerCycle' | 'conditions'> {
  return {
    elements: (method?.elements ?? []).map(({ unitsPerOccurrence, ...element }, key) => ({
      ...element,
      key,
      units: element.elementClass === 'occasional' ? String(unitsPerOccurrence) : '',
    })),
    partsPerCycle: String(method?.partsPerCycle ?? 1),
    conditions: method?.conditions ?? '',
  };
}

export function newElementDraft(elements: readonly ElementDraft[]): ElementDraft {
  return {
    key: Math.max(-1, ...elements.map(({ key }) => key)) + 1,
    name: '',
    breakPoint: '',
    elementClass: 'repetitive',
    units: '',
    work: 'manual',
    placement: 'external',
  };
}

/** The elements as a method holds them. An element of every cycle occurs once in one, whatever was typed. */
export function elementsOf(drafts: readonly ElementDraft[]): ElementDefinition[] {
  return drafts.map(({ name, breakPoint, elementClass, units, work, placement }) => ({
    name: name.trim(),
    breakPoint: breakPoint.trim(),
    elementClass,
    work,
    placement,
    unitsPerOccurrence: elementClass === 'occasional' ? wholeOf(units) : 1,
  }));
}

/** A typed whole number; 0 for anything that is none. */
export function wholeOf(typed: string): number {
  return /^\d{1,9}$/.test(typed.trim()) ? Number(typed) : 0;
}

/** The sheet says something else than the revision: it will be another one. */
export function isRevised(draft: StudyDraft, method: MethodRevision | undefined): boolean {
  if (!method) return draft.elements.length > 0;
  const written = [elementsOf(draft.elements), wholeOf(draft.partsPerCycle), draft.conditions.trim()];
  const kept = [method.elements.map(ordered), method.partsPerCycle, method.conditions];
  return (
    JSON.stringify([(written[0] as ElementDefinition[]).map(ordered), ...written.slice(1)]) !==
    JSON.stringify(kept)
  );
}

function ordered({ name, breakPoint, elementClass, work, placement, unitsPerOccurrence }: ElementDefinition) {
  return [name, breakPoint, elementClass, work, placement, unitsPerOccurrence];
}
