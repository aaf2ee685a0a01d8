import type { AllowanceTerms } from '../../../domain/study/allowance-terms';
import type { StudiesAnalysis } from '../../../domain/study/analyse-studies';
import { studyStandard } from '../../../i18n/en/study-standard';
import { formatNumber } from '../../../i18n/format-number';
import { FoldedSection } from '../folded-section';
import { percentOf } from '../percent-of';
import { standardFormula } from '../standard-formula';
import type { TimeWords } from '../time-words';
import { uncertaintyNumbers } from '../total-working';

const words = studyStandard.working;

/** How the figures of the analysis came about: in words, formula, numbers and source. */
export function StandardWorking({
  analysis,
  lines,
  time: { figure, said },
}: {
  analysis: StudiesAnalysis;
  lines: AllowanceTerms['lines'];
  time: TimeWords;
}) {
  const { together, sampling, cycles, groups } = analysis;
  const { externalMs, internalMs, occasionalMs, machineMs, terms, standardTimeMs } = together;
  const sums = words.sums(figure(externalMs), figure(internalMs), figure(occasionalMs), figure(machineMs));
  return (
    <FoldedSection title={words.title} summary={standardFormula(together)}>
      <p>{words.means}</p>
      <p class="number">{sums}</p>
      <p class="number">
        {words.terms(
          madeUp(lines) + formatNumber(terms.allowancePct, 2),
          formatNumber(terms.machineAllowancePct, 2),
        )}
        {standardTimeMs !== null && ` ${words.gives(said(standardTimeMs))}`}
      </p>
      <p class="study-formula">{words.interval(groups > 1)}</p>
      {sampling !== null && (
        <p class="number">
          {words.stands(cycles, groups, percentOf(sampling))} {uncertaintyNumbers(analysis).join(' ')}
        </p>
      )}
      <p class="quiet small">{words.source}</p>
    </FoldedSection>
  );
}

/** What an allowance is made up of, before its sum. */
function madeUp(lines: AllowanceTerms['lines']): string {
  return lines ? `${lines.map(({ name, pct }) => `${name} ${formatNumber(pct, 2)}`).join(' + ')} = ` : '';
}
