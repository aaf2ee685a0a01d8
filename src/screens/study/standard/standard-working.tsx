import type { StudiesAnalysis } from '../../../domain/study/analyse-studies';
import { studyStandard } from '../../../i18n/en/study-standard';
import { studyWorking } from '../../../i18n/en/study-working';
import { formatNumber } from '../../../i18n/format-number';
import { percentOf } from '../clock-panel';
import { FoldedSection } from '../folded-section';
import { standardFormula } from '../standard-formula';
import type { TimeWords } from '../time-words';

const words = studyStandard.working;

/** How the figures of the analysis came about: in words, formula, numbers and source. */
export function StandardWorking({
  analysis,
  time: { figure, said },
}: {
  analysis: StudiesAnalysis;
  time: TimeWords;
}) {
  const { together, sampling, uncertainty, frequency, cycles, groups } = analysis;
  const { externalMs, internalMs, occasionalMs, machineMs, terms, standardTimeMs } = together;
  const sums = words.sums(figure(externalMs), figure(internalMs), figure(occasionalMs), figure(machineMs));
  return (
    <FoldedSection title={words.title} summary={standardFormula(together)}>
      <p>{words.means}</p>
      <p class="number">{sums}</p>
      <p class="number">
        {words.terms(formatNumber(terms.allowancePct, 2), formatNumber(terms.machineAllowancePct, 2))}
        {standardTimeMs !== null && ` ${words.gives(said(standardTimeMs))}`}
      </p>
      <p class="study-formula">{words.interval(groups > 1)}</p>
      {sampling !== null && uncertainty !== null && (
        <p class="number">
          {words.stands(cycles, groups, percentOf(sampling))}{' '}
          {studyWorking.uncertainty.numbers(
            percentOf(sampling),
            percentOf(frequency),
            percentOf(uncertainty),
          )}
        </p>
      )}
      <p class="quiet small">{words.source}</p>
    </FoldedSection>
  );
}
