import { useMemo, useState } from 'preact/hooks';
import type { StudyOfPart } from '../../../application/study/read-studies-of-part';
import type { PartStandards } from '../../../domain/shop/fold-standards';
import type { Part } from '../../../domain/shop/shop';
import { type AllowanceTerms, noAllowances } from '../../../domain/study/allowance-terms';
import { analyseStudies, type StudiesAnalysis } from '../../../domain/study/analyse-studies';
import { studySheet } from '../../../i18n/en/study-sheet';
import { studyStandard as words } from '../../../i18n/en/study-standard';
import { ChoiceRow } from '../choice-row';
import { percentOf } from '../clock-panel';
import { behindWords } from '../one-lane-note';
import { PaperFoot } from '../paper-foot';
import { standardFormula } from '../standard-formula';
import { StudyCautions } from '../study-cautions';
import { draftOfTerms, termsOf } from '../terms-draft';
import { TermsFields } from '../terms-fields';
import { useTimeUnit } from '../use-time-unit';
import { AnalysisTable } from './analysis-table';
import { IssueForm } from './issue-form';
import { allowanceWords, RevisionsTable } from './revisions-table';
import { StandardWorking } from './standard-working';

interface Props {
  readonly part: Part;
  readonly studies: readonly StudyOfPart[];
  readonly known: PartStandards;
}

/** From one study or several to a standard: which count, what they say together, how wide it stands. */
export function StandardOfPart({ part, studies, known }: Props) {
  const method = part.methods.at(-1);
  const { unit, time, choose } = useTimeUnit();
  // The allowances of the newest study that can make a standard, else of the newest.
  const [terms, setTerms] = useState(() => {
    const from = studies.find(({ obstacles }) => obstacles.length === 0) ?? studies[0];
    return draftOfTerms(from?.study.terms ?? noAllowances);
  });
  const [left, setLeft] = useState<ReadonlySet<string>>(() => new Set());
  const [taken, setTaken] = useState<ReadonlySet<string>>(() => new Set());
  const isOther = ({ methodRevision }: StudyOfPart) =>
    methodRevision !== null && method !== undefined && methodRevision !== method.revision;
  // Nobody has to leave out by hand what cannot make a standard; but a hand may put it back and see.
  const counts = (study: StudyOfPart) =>
    taken.has(study.id) || (!left.has(study.id) && study.obstacles.length === 0 && !isOther(study));
  const toggle = (study: StudyOfPart) => {
    const isIn = counts(study);
    const change = (set: ReadonlySet<string>, isMember: boolean) => {
      const changed = new Set(set);
      if (isMember) changed.add(study.id);
      else changed.delete(study.id);
      return changed;
    };
    setTaken(change(taken, !isIn));
    setLeft(change(left, isIn));
  };
  const chosen = studies.filter(counts);
  const allowances = termsOf(terms);
  const analysis = useMemo(
    () => (chosen.length > 0 && allowances ? analyseStudies(chosen, allowances) : null),
    [studies, taken, left, terms],
  );
  if (studies.length === 0) return <p>{words.noStudies}</p>;
  return (
    <>
      {analysis?.together.standardTimeMs != null && (
        <p class="study-answer">
          {studySheet.answer.name}{' '}
          <strong class="number">{time.said(analysis.together.standardTimeMs)}</strong>{' '}
          <span class="quiet">
            {words.allowing(allowanceWords(analysis.together.terms))} {standsOn(analysis)}
          </span>
        </p>
      )}
      <div class="no-print">
        <ChoiceRow label={studySheet.unit} options={studySheet.units} value={unit} onChoose={choose} />
      </div>
      <AnalysisTable
        studies={studies}
        counts={counts}
        isOther={isOther}
        onToggle={toggle}
        analysis={analysis}
        chosen={chosen}
        time={time}
      />
      {behindOf(chosen).map((one) => (
        <p key={one.id} class="fault">
          <strong>{one.title}:</strong> {behindWords(one.study)}
        </p>
      ))}
      {analysis && <StandardWorking analysis={analysis} time={time} />}
      <div class="no-print">
        <TermsFields terms={terms} onChange={setTerms} />
      </div>
      {chosen.length === 0 && <p class="fault">{words.chooseOne}</p>}
      {analysis && allowances && (
        <IssueForm
          key={known.standards.length}
          part={part}
          analysis={analysis}
          chosen={chosen}
          terms={allowances as AllowanceTerms}
          standards={known.standards}
        />
      )}
      <RevisionsTable
        part={part}
        studies={studies}
        standards={known.standards}
        analysis={analysis}
        time={time}
      />
      <StudyCautions />
      {analysis && <PaperFoot standardFormula={standardFormula(analysis.together)} />}
    </>
  );
}

/** Studies in which work of the run was timed after the stop: the standard counts it as the study does. */
const behindOf = (chosen: readonly StudyOfPart[]) => chosen.filter(({ study }) => behindWords(study) !== '');

function standsOn({ sampling, uncertainty, cycles, groups }: StudiesAnalysis): string {
  if (sampling === null || uncertainty === null) return words.tooFew;
  return `${words.stands(percentOf(sampling), cycles, groups)} ${words.withRating(percentOf(uncertainty))}`;
}
