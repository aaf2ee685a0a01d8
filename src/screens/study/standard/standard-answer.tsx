import { localDay } from '../../../domain/day/local-day';
import { type StandardRevision, standardInForce, standardToCome } from '../../../domain/shop/fold-standards';
import type { StudiesAnalysis } from '../../../domain/study/analyse-studies';
import { study as allWords } from '../../../i18n/en/study';
import { studySheet } from '../../../i18n/en/study-sheet';
import { studyStandard as words } from '../../../i18n/en/study-standard';
import { formatNumber } from '../../../i18n/format-number';
import { useApp } from '../../app';
import { percentOf } from '../percent-of';
import type { TimeWords } from '../time-words';
import { allowanceWords } from './revisions-table';

interface Props {
  readonly standards: readonly StandardRevision[];
  readonly time: TimeWords;
}

/** The standard of the part, as it was issued: what is ticked below moves nothing here. */
export function StandardAnswer({ standards, time }: Props) {
  const day = localDay(useApp().bench.clock.now());
  const inForce = standardInForce(standards, day);
  const toCome = standardToCome(standards, day);
  const shown = inForce ?? toCome;
  if (!shown) return null;
  const { revision, inForceOn, standardTimeMs, terms, uncertainty, cycles, operators, days } = shown;
  return (
    <>
      <p class="study-answer">
        {studySheet.answer.name} <strong class="number">{time.said(standardTimeMs)}</strong>{' '}
        <span class="quiet">
          {words.issuedAs(revision, inForceOn)} {words.allowing(allowanceWords(terms))}{' '}
          {uncertainty === null ? allWords.progress.cycles(cycles) : words.withRating(percentOf(uncertainty))}{' '}
          {operators.length < 2 && days.length < 2 && words.oneDay}
        </span>
      </p>
      {inForce && toCome && (
        <p>
          {words.issuedAs(toCome.revision, toCome.inForceOn)}{' '}
          <strong class="number">{time.said(toCome.standardTimeMs)}</strong>
        </p>
      )}
    </>
  );
}

/** What the studies ticked would be; the only figure of a part that has no standard yet. */
export function ProposalAnswer({
  analysis,
  isAlone,
  time,
}: Pick<Props, 'time'> & { analysis: StudiesAnalysis; isAlone: boolean }) {
  const { together, sampling, uncertainty, cycles, groups, moreDays } = analysis;
  if (together.standardTimeMs === null) return null;
  return (
    <p class={isAlone ? 'study-answer' : ''}>
      {words.proposal} <strong class="number">{time.said(together.standardTimeMs)}</strong>{' '}
      <span class="quiet">
        {words.allowing(allowanceWords(together.terms))}{' '}
        {sampling === null || uncertainty === null
          ? allWords.progress.cycles(cycles)
          : `${words.stands(percentOf(sampling), cycles, groups)} ${words.withRating(percentOf(uncertainty))}`}{' '}
        {groups < 2 && words.oneDay}
        {moreDays && words.moreDays(formatNumber(moreDays.t, 1), moreDays.needed)}
      </span>
    </p>
  );
}
