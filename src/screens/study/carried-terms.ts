import type { Bench } from '../../application/bench';
import { readStandards } from '../../application/shop/read-standards';
import type { Part } from '../../domain/shop/shop';
import type { Study } from '../../domain/study/study';
import { STANDARD_OF } from './study-places';
import { draftOfTerms, type TermsDraft } from './terms-draft';

/** Where allowances come from that nobody typed: a part's last study, or its standard. */
export interface TermsFrom {
  readonly what: 'study' | 'standard';
  readonly partCode: string;
  /** Place of the Study screen where they can be looked at. */
  readonly place: string;
}

interface CarriedTerms {
  readonly terms: TermsDraft;
  readonly termsFrom: TermsFrom;
}

/** The allowances of the study that was timed last, whatever its part; null where it had none. */
export function termsOfLast(study: Pick<Study, 'id' | 'heading' | 'terms'> | null): CarriedTerms | null {
  if (!study?.heading) return null;
  const { id, heading, terms } = study;
  if (terms.allowancePct === 0 && terms.machineAllowancePct === 0) return null;
  return {
    terms: draftOfTerms(terms),
    termsFrom: { what: 'study', partCode: heading.partCode, place: id },
  };
}

/** The allowances of the part's newest standard; null where it has none. */
export async function termsInForce(bench: Bench, { id, code }: Part): Promise<CarriedTerms | null> {
  const terms = (await readStandards(bench)).get(id)?.standards.at(-1)?.terms;
  if (!terms) return null;
  return {
    terms: draftOfTerms(terms),
    termsFrom: { what: 'standard', partCode: code, place: STANDARD_OF + id },
  };
}
