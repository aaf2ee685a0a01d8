import { useMemo, useState } from 'preact/hooks';
import { countsByItself, isOneMethod } from '../../../application/study/counts-by-itself';
import type { StudyOfPart } from '../../../application/study/read-studies-of-part';
import type { PartStandards } from '../../../domain/shop/fold-standards';
import type { Part } from '../../../domain/shop/shop';
import { type AllowanceTerms, noAllowances } from '../../../domain/study/allowance-terms';
import { analyseStudies } from '../../../domain/study/analyse-studies';
import { studySheet } from '../../../i18n/en/study-sheet';
import { studyStandard as words } from '../../../i18n/en/study-standard';
import { ChoiceRow } from '../choice-row';
import { behindWords } from '../one-lane-note';
import { PaperFoot } from '../paper-foot';
import { PastTarget } from '../past-target';
import { standardFormula } from '../standard-formula';
import { StudyCautions } from '../study-cautions';
import { draftOfTerms, termsOf } from '../terms-draft';
import { TermsFields } from '../terms-fields';
import { useTimeUnit } from '../use-time-unit';
import { AnalysisTable } from './analysis-table';
import { IssueForm } from './issue-form';
import { MethodOnPaper } from './method-on-paper';
import { RevisionsTable } from './revisions-table';
import { ProposalAnswer, StandardAnswer } from './standard-answer';
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
  const issued = known.standards.at(-1);
  // The allowances of what was issued last, else of the newest study that can make a standard, else of the newest.
  const [terms, setTerms] = useState(() => {
    const from = studies.find(({ obstacles }) => obstacles.length === 0) ?? studies[0];
    return draftOfTerms(issued?.terms ?? from?.study.terms ?? noAllowances);
  });
  const [left, setLeft] = useState<ReadonlySet<string>>(() => new Set());
  const [taken, setTaken] = useState<ReadonlySet<string>>(() => new Set());
  // Nobody has to leave out by hand what cannot make a standard; but a hand may put it back and see.
  const counts = (study: StudyOfPart) =>
    taken.has(study.id) || (!left.has(study.id) && countsByItself(study, method, issued));
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
  // Two revisions of a method together would count one work twice.
  const isOne = isOneMethod(chosen);
  const analysis = useMemo(
    () => (isOne && chosen.length > 0 && allowances ? analyseStudies(chosen, allowances) : null),
    [studies, issued, taken, left, terms],
  );
  if (studies.length === 0) return <p>{words.noStudies}</p>;
  const isIssued = issued !== undefined && issued.standardTimeMs === analysis?.together.standardTimeMs;
  return (
    <>
      <StandardAnswer standards={known.standards} time={time} />
      <PastTarget part={part} said={time.said} />
      {analysis && !isIssued && <ProposalAnswer analysis={analysis} isAlone={!issued} time={time} />}
      <MethodOnPaper part={part} />
      <div class="no-print">
        <ChoiceRow label={studySheet.unit} options={studySheet.units} value={unit} onChoose={choose} />
      </div>
      <AnalysisTable
        studies={studies}
        counts={counts}
        method={method}
        issued={issued}
        onToggle={toggle}
        analysis={analysis}
        chosen={chosen}
        time={time}
      />
      {!isOne && <p class="fault">{words.mixed}</p>}
      {behindOf(chosen).map((one) => (
        <p key={one.id} class="fault">
          <strong>{one.title}:</strong> {behindWords(one.study)}
        </p>
      ))}
      {analysis && <StandardWorking analysis={analysis} lines={allowances?.lines} time={time} />}
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
        chosen={chosen}
        time={time}
      />
      <StudyCautions />
      {analysis && <PaperFoot standardFormula={standardFormula(analysis.together)} />}
    </>
  );
}

/** Studies in which work of the run was timed after the stop: the standard counts it as the study does. */
const behindOf = (chosen: readonly StudyOfPart[]) => chosen.filter(({ study }) => behindWords(study) !== '');
