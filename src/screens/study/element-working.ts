import { ratedInterval } from '../../domain/study/rated-interval';
import { FEWEST_FOR_INTERVAL } from '../../domain/study/study-progress';
import type { StudyRow } from '../../domain/study/study-row';
import type { ElementSummary } from '../../domain/study/summarise-study';
import { studyWorking as words } from '../../i18n/en/study-working';
import { formatNumber } from '../../i18n/format-number';
import { causeWords } from './cause-words';
import { neededWorking, type RequiredForm } from './needed-working';
import type { TimeWords } from './time-words';
import type { Working } from './working';

export type ElementFigure =
  | 'n'
  | 'observed'
  | 'rating'
  | 'normal'
  | 'frequency'
  | 'perUnit'
  | 'precision'
  | 'needed';

export interface ElementEvidence {
  readonly summary: ElementSummary;
  readonly rows: readonly StudyRow[];
  readonly time: TimeWords;
  readonly form: RequiredForm;
}

/** The working of one figure on an element's line of the summary sheet. */
export function elementWorking(figure: ElementFigure, evidence: ElementEvidence): Working {
  const { summary } = evidence;
  const leftOut = leftOutOf(evidence);
  const about = `${summary.elementNo}  ${summary.element}`;
  const base = { ...words[figure], what: `${words[figure].what}: ${about}`, leftOut };
  switch (figure) {
    case 'n':
      return {
        ...words.n,
        ...base,
        numbers: [words.n.numbers(summary.n, summary.n + summary.excluded, summary.excluded)],
      };
    case 'observed':
      return { ...words.observed, ...base, numbers: observedNumbers(evidence) };
    case 'rating':
      return { ...words.rating, ...base, numbers: ratingNumbers(evidence) };
    case 'normal':
      return { ...words.normal, ...base, numbers: normalNumbers(evidence) };
    case 'frequency':
      return { ...words.frequency, ...base, numbers: [frequencyNumbers(summary)], leftOut: null };
    case 'perUnit':
      return { ...words.perUnit, ...base, numbers: [perUnitNumbers(evidence)] };
    case 'precision':
      return { ...words.precision, ...base, numbers: precisionNumbers(evidence) };
    case 'needed':
      return { ...neededWorking(evidence), what: base.what, leftOut };
  }
}

const used = ({ rows }: ElementEvidence) =>
  rows.flatMap(({ excluded, observedMs, ratingPct }) =>
    excluded === null && observedMs !== null ? [{ observedMs, ratingPct }] : [],
  );

function leftOutOf({ rows, time }: ElementEvidence): string[] {
  return rows.flatMap(({ cycle, observedMs, excluded }) => {
    if (excluded === null) return [];
    const cause = causeWords(excluded);
    return observedMs === null
      ? [words.leftOutMissed(cycle, cause)]
      : [words.leftOutReading(cycle, time.said(observedMs), cause)];
  });
}

function observedNumbers(evidence: ElementEvidence): string[] {
  const { summary, time } = evidence;
  const terms = used(evidence).map(({ observedMs }) => time.figure(observedMs));
  const lines = [`(${terms.join(' + ')}) ÷ ${summary.n} = ${time.said(summary.observedMeanMs ?? 0)}`];
  if (summary.excluded > 0 && summary.meanOfAllMs !== null) {
    lines.push(words.withAll(time.said(summary.meanOfAllMs)));
  }
  return lines;
}

function ratingNumbers(evidence: ElementEvidence): string[] {
  const { summary } = evidence;
  if (summary.work === 'machine') return [words.rating.machine];
  const terms = used(evidence).map(({ ratingPct }) => ratingPct);
  return [`(${terms.join(' + ')}) ÷ ${summary.n} = ${formatNumber(summary.meanRatingPct ?? 0, 1)}`];
}

function normalNumbers(evidence: ElementEvidence): string[] {
  const { summary, time } = evidence;
  if (summary.work === 'machine') {
    return [words.normal.machine, `NT = ${time.said(summary.normalMeanMs ?? 0)}`];
  }
  const terms = used(evidence).map(
    ({ observedMs, ratingPct }) => `${time.figure(observedMs)} · ${formatNumber(ratingPct / 100, 2)}`,
  );
  return [`(${terms.join(' + ')}) ÷ ${summary.n} = ${time.said(summary.normalMeanMs ?? 0)}`];
}

function frequencyNumbers({ unitsPerOccurrence, partsPerCycle }: ElementSummary): string {
  const each = 1 / unitsPerOccurrence / partsPerCycle;
  return `1 ÷ (${unitsPerOccurrence} · ${partsPerCycle}) = ${formatNumber(each, 4)}`;
}

function perUnitNumbers({ summary, time }: ElementEvidence): string {
  const { normalMeanMs, unitsPerOccurrence, partsPerCycle, normalPerUnitMs } = summary;
  return `${time.figure(normalMeanMs ?? 0)} ÷ (${unitsPerOccurrence} · ${partsPerCycle}) = ${time.said(normalPerUnitMs ?? 0)}`;
}

function precisionNumbers(evidence: ElementEvidence): string[] {
  const { summary, rows, time } = evidence;
  const interval = ratedInterval(rows, 0.95);
  if (!interval || summary.precision === null) return [];
  const { n, mean, standardDeviation, t, halfWidth } = interval;
  if (n < FEWEST_FOR_INTERVAL) {
    const rated = used(evidence).map(({ observedMs, ratingPct }) => (observedMs * ratingPct) / 100);
    return [
      words.precision.range(time.said(Math.min(...rated)), time.said(Math.max(...rated)), time.said(mean)),
    ];
  }
  return [
    words.precision.numbers(
      n,
      time.fine(standardDeviation),
      formatNumber(t, 3),
      time.fine(halfWidth),
      time.fine(mean),
    ),
    `= ± ${formatNumber(summary.precision * 100, 1)} %`,
  ];
}
