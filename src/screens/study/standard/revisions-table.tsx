import type { StudyOfPart } from '../../../application/study/read-studies-of-part';
import { localDay } from '../../../domain/day/local-day';
import { type StandardRevision, standardInForce, standardToCome } from '../../../domain/shop/fold-standards';
import type { Part } from '../../../domain/shop/shop';
import type { AllowanceTerms } from '../../../domain/study/allowance-terms';
import type { StudiesAnalysis } from '../../../domain/study/analyse-studies';
import { compareWithStandard } from '../../../domain/study/compare-with-standard';
import { isLaterStudy, standardDue } from '../../../domain/study/standard-due';
import { summariseStudy } from '../../../domain/study/summarise-study';
import { study as allWords } from '../../../i18n/en/study';
import { studySheet } from '../../../i18n/en/study-sheet';
import { studyStandard as words } from '../../../i18n/en/study-standard';
import { formatNumber } from '../../../i18n/format-number';
import { useApp } from '../../app';
import { percentOf } from '../percent-of';
import type { TimeWords } from '../time-words';

interface Props {
  readonly part: Part;
  readonly studies: readonly StudyOfPart[];
  readonly standards: readonly StandardRevision[];
  readonly analysis: StudiesAnalysis | null;
  readonly chosen: readonly StudyOfPart[];
  readonly time: TimeWords;
}

/** Every standard the part had, which holds today, and what makes that one due for a check study. */
export function RevisionsTable(props: Props) {
  const { standards, time } = props;
  const day = localDay(useApp().bench.clock.now());
  const inForce = standardInForce(standards, day);
  const toCome = standardToCome(standards, day);
  return (
    <section class="stack" aria-labelledby="study-revisions">
      <h2 id="study-revisions">{words.revisions}</h2>
      {standards.length === 0 && <p class="quiet">{words.none}</p>}
      {inForce && <Standing {...props} standard={inForce} day={day} />}
      {standards.length > 0 && (
        <table class="sheet">
          <thead>
            <tr>
              <th scope="col">{words.number}</th>
              <th scope="col">{words.standard}</th>
              <th scope="col" class="words">
                {studySheet.totals.allowances}
              </th>
              <th scope="col" class="words">
                {words.since}
              </th>
              <th scope="col" class="words">
                {words.rests}
              </th>
              <th scope="col" class="words">
                {words.issuedBy}
              </th>
            </tr>
          </thead>
          <tbody>
            {[...standards].reverse().map((standard) => (
              <tr key={standard.id}>
                <td>
                  {standard.revision} {standard === inForce && <strong>{words.isInForce}</strong>}
                  {standard === toCome && words.from(standard.inForceOn)}
                </td>
                <td>{time.said(standard.standardTimeMs)}</td>
                <td class="words">{allowanceWords(standard.terms)}</td>
                <td class="words">{standard.inForceOn}</td>
                <td class="words">
                  {words.restsOn(standard.studies.length, standard.cycles, allWords.and(standard.operators))}
                </td>
                <td class="words">{standard.issuedBy}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

/** A share with its basis: never one without the other. */
export function allowanceWords({ allowancePct, basis, machineAllowancePct }: AllowanceTerms): string {
  const pct = (value: number) => formatNumber(value, Number.isInteger(value) ? 0 : 2);
  return studySheet.allowance(pct(allowancePct), allWords.terms.bases[basis], pct(machineAllowancePct));
}

function Standing(props: Props & { standard: StandardRevision; day: string }) {
  const { part, studies, analysis, chosen, time, standard, day } = props;
  const later = studies.filter((study) => isLaterStudy(study, standard));
  const causes = standardDue(standard, {
    day,
    method: part.methods.at(-1),
    laterNormalMs: later.flatMap(({ rows }) => summariseStudy(rows).normalTimeMs ?? []),
  });
  const normalMs = analysis?.together.normalTimeMs ?? null;
  const change = normalMs === null ? 0 : normalMs / standard.normalTimeMs - 1;
  const compared = analysis && compareWithStandard(chosen, standard, studies);
  const basis = analysis?.together.terms.basis ?? standard.terms.basis;
  return (
    <>
      {causes.length === 0 ? (
        <p>{words.notDue}</p>
      ) : (
        <p class="fault">
          {words.dueTitle} {causes.map((cause) => words.due[cause]).join('; ')}.
        </p>
      )}
      {normalMs !== null && Math.abs(change) >= 0.0005 && (
        <p>
          {words.against(standard.revision, percentOf(Math.abs(change)), change > 0 ? 'longer' : 'shorter')}{' '}
          {basis !== standard.terms.basis && words.otherBasis(allowanceWords(standard.terms))}{' '}
          {compared &&
            words.cycle(
              time.figure(compared.lower),
              time.said(compared.upper),
              compared.lower * compared.upper > 0,
            )}
        </p>
      )}
    </>
  );
}
