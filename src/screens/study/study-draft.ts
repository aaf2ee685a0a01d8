import type { PartSize } from '../../domain/records/standard-fact';
import type { StudyHeading, StudyPurpose } from '../../domain/records/study-fact';
import type {
  ElementClass,
  ElementDefinition,
  Placement,
  WorkKind,
} from '../../domain/shop/element-definition';
import type { MethodRevision } from '../../domain/shop/shop';
import { noAllowances } from '../../domain/study/allowance-terms';
import { hasTwoLanes, hasWorkInRun, type Study } from '../../domain/study/study';
import { parseNumber, parseWhole } from '../../i18n/parse-number';
import { type TermsFrom, termsOfLast } from './carried-terms';
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
  /** What it grows with; empty for a constant element. */
  readonly driver: string;
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
  /** Null once they were typed, and where there are none. */
  readonly termsFrom: TermsFrom | null;
  readonly told: boolean;
  readonly timing: 'continuous' | 'snapback';
  /** Empty until it is chosen: the method says which. */
  readonly chosenLanes: '' | '1' | '2';
  /** Empty until it is said. */
  readonly purpose: StudyPurpose | '';
  readonly agreement: string;
  readonly plan: string;
  readonly plannedCycles: string;
  /** Typed sizes of the part, by driver. */
  readonly sizes: TypedSizes;
  /** Methods that were written and not kept when another part was chosen, by part. */
  readonly left: Readonly<Record<string, MethodDraft>>;
}

export type TypedSizes = Readonly<Record<string, string>>;
export type MethodDraft = Pick<StudyDraft, 'elements' | 'partsPerCycle' | 'conditions'>;

export function emptyStudyDraft(last: Pick<Study, 'id' | 'heading' | 'terms'> | null): StudyDraft {
  return {
    part: '',
    elements: [],
    partsPerCycle: '1',
    conditions: '',
    operator: '',
    observer: last?.heading?.observer ?? '',
    ...(termsOfLast(last) ?? { terms: draftOfTerms(noAllowances), termsFrom: null }),
    told: false,
    timing: 'continuous',
    chosenLanes: '',
    purpose: '',
    agreement: '',
    plan: '',
    plannedCycles: '',
    sizes: {},
    left: {},
  };
}

/** The lines of a method on the sheet; none for a part without one. */
export function draftOfMethod(method: MethodRevision | undefined): MethodDraft {
  return {
    elements: (method?.elements ?? []).map(({ unitsPerOccurrence, driver = '', ...element }, key) => ({
      ...element,
      driver,
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
    driver: '',
  };
}

/** The elements as a method holds them. An element of every cycle occurs once in one, whatever was typed. */
export function elementsOf(drafts: readonly ElementDraft[]): ElementDefinition[] {
  return drafts.map(({ name, breakPoint, elementClass, units, work, placement, driver }) => ({
    name: name.trim(),
    breakPoint: breakPoint.trim(),
    elementClass,
    work,
    placement,
    unitsPerOccurrence: elementClass === 'occasional' ? wholeOf(units) : 1,
    ...(driver.trim() === '' ? {} : { driver: driver.trim() }),
  }));
}

/** How the watch will be tapped: as it was chosen, else operator and machine at once where the work overlaps. */
export function lanesOfDraft({ elements, chosenLanes }: Pick<StudyDraft, 'elements' | 'chosenLanes'>): 1 | 2 {
  const method = elementsOf(elements);
  if (!hasTwoLanes(method)) return 1;
  return chosenLanes === '' ? (hasWorkInRun(method) ? 2 : 1) : chosenLanes === '2' ? 2 : 1;
}

/** A typed whole number; 0 for anything that is none. */
export function wholeOf(typed: string): number {
  const read = parseWhole(typed) ?? 0;
  return read < 1e9 ? read : 0;
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

function ordered(element: ElementDefinition) {
  const { name, breakPoint, elementClass, work, placement, unitsPerOccurrence, driver = '' } = element;
  return [name, breakPoint, elementClass, work, placement, unitsPerOccurrence, driver];
}

/** What the elements of the method grow with, each once. */
export function driversOf(elements: readonly { readonly driver?: string }[]): string[] {
  return [...new Set(elements.map(({ driver = '' }) => driver.trim()).filter((driver) => driver !== ''))];
}

/** The sizes typed for these drivers; a size that is no number above zero is missing. */
export function sizesOf(drivers: readonly string[], sizes: TypedSizes): PartSize[] {
  return drivers.flatMap((driver) => {
    const value = parseNumber(sizes[driver] ?? '') ?? 0;
    return value > 0 ? [{ driver, value }] : [];
  });
}

/** What was said beside the method: only what was said at all. */
export function planOf(
  draft: StudyDraft,
): Pick<StudyHeading, 'purpose' | 'agreement' | 'plan' | 'plannedCycles' | 'sizes'> {
  const { purpose, plannedCycles } = draft;
  const agreement = draft.agreement.trim();
  const plan = draft.plan.trim();
  const sizes = sizesOf(driversOf(draft.elements), draft.sizes);
  return {
    ...(purpose === '' ? {} : { purpose }),
    ...(agreement === '' ? {} : { agreement }),
    ...(plan === '' ? {} : { plan }),
    ...(wholeOf(plannedCycles) < 1 ? {} : { plannedCycles: wholeOf(plannedCycles) }),
    ...(sizes.length === 0 ? {} : { sizes }),
  };
}
