import type { AllowanceTerms } from '../../domain/study/allowance-terms';
import type { StudiesAnalysis } from '../../domain/study/analyse-studies';
import { governingBranch } from '../../domain/study/governing-branch';
import type { ElementSummary, StudySummary } from '../../domain/study/summarise-study';
import { study } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { studyWorking as words } from '../../i18n/en/study-working';
import { formatNumber } from '../../i18n/format-number';
import { percentOf } from './percent-of';
import type { TimeWords } from './time-words';
import type { Working } from './working';

export type SumFigure = 'external' | 'internal' | 'machine' | 'occasional';
export type TotalFigure = SumFigure | 'normal' | 'standard' | 'pieces' | 'hours' | 'governs' | 'uncertainty';

/** Which elements a sum holds: the same rule as the summary's. */
const belongs: Record<SumFigure, (element: ElementSummary) => boolean> = {
  occasional: ({ elementClass }) => elementClass === 'occasional',
  machine: ({ elementClass, work }) => elementClass === 'repetitive' && work === 'machine',
  external: (element) => isByHand(element) && element.placement === 'external',
  internal: (element) => isByHand(element) && element.placement === 'internal',
};

function isByHand({ elementClass, work }: ElementSummary): boolean {
  return elementClass === 'repetitive' && work !== 'machine';
}

/** The working of a figure below the lines of the summary sheet. */
export function totalWorking(
  figure: TotalFigure,
  summary: StudySummary,
  time: TimeWords,
  analysis: StudiesAnalysis | null = null,
): Working {
  switch (figure) {
    case 'normal':
      return normalWorking(summary, time);
    case 'standard':
      return standardWorking(summary, time);
    case 'pieces':
      return plain('pieces', studySheet.totals.pieces, piecesNumbers(summary, time));
    case 'hours':
      return plain('hours', studySheet.totals.hours, hoursNumbers(summary, time));
    case 'governs':
      return governsWorking(summary, time);
    case 'uncertainty':
      return uncertaintyWorking(analysis);
    default:
      return sumWorking(figure, summary, time);
  }
}

const plain = (figure: 'pieces' | 'hours', what: string, numbers: string): Working => ({
  ...words[figure],
  what,
  numbers: [numbers],
  leftOut: null,
});

function sumWorking(figure: SumFigure, { elements, ...sums }: StudySummary, time: TimeWords): Working {
  const own = elements.filter(belongs[figure]);
  const total = {
    external: sums.externalMs,
    internal: sums.internalMs,
    machine: sums.machineMs,
    occasional: sums.occasionalMs,
  };
  const terms = own.map(({ element, normalPerUnitMs }) =>
    normalPerUnitMs === null ? `${element} ${study.none}` : `${element} ${time.figure(normalPerUnitMs)}`,
  );
  return {
    what: studySheet.totals[figure],
    words: words.sum.words,
    symbols: words.sum.symbols,
    numbers: [own.length === 0 ? words.sum.empty : `${terms.join(' + ')} = ${time.said(total[figure])}`],
    leftOut: null,
    source: words.sum.source,
  };
}

function normalWorking(summary: StudySummary, time: TimeWords): Working {
  const { externalMs, internalMs, occasionalMs, machineMs, normalTimeMs } = summary;
  const hasMachine = machineMs > 0;
  const numbers = hasMachine
    ? `${time.figure(externalMs)} + ${time.figure(occasionalMs)} + max(${time.figure(internalMs)}; ${time.figure(machineMs)})`
    : `${time.figure(externalMs)} + ${time.figure(internalMs)} + ${time.figure(occasionalMs)}`;
  return {
    what: studySheet.totals.normal,
    words: hasMachine ? words.normalTotal.words : words.normalTotal.plainWords,
    symbols: hasMachine ? words.normalTotal.symbols : words.normalTotal.plainSymbols,
    numbers: [`${numbers} = ${time.said(normalTimeMs ?? 0)}`],
    leftOut: null,
    source: words.normalTotal.source,
  };
}

function standardWorking(summary: StudySummary, time: TimeWords): Working {
  const { externalMs, internalMs, occasionalMs, machineMs, normalTimeMs, standardTimeMs, terms } = summary;
  const hasMachine = machineMs > 0;
  const own = factor(terms.allowancePct, terms);
  const machine = factor(terms.machineAllowancePct, terms);
  const numbers = hasMachine
    ? `(${time.figure(externalMs)} + ${time.figure(occasionalMs)}) ${own} + max(${time.figure(internalMs)} ${own}; ${time.figure(machineMs)} ${machine})`
    : `${time.figure(normalTimeMs ?? 0)} ${own}`;
  return {
    what: studySheet.totals.standard,
    words: words.standard.words,
    symbols: hasMachine ? words.standard.machineSymbols[terms.basis] : words.standard.symbols[terms.basis],
    numbers: [`${numbers} = ${time.said(standardTimeMs ?? 0)}`],
    leftOut: null,
    source: words.standard.source,
  };
}

/** `· 1.15` or `÷ 0.85`: the same allowance on the two bases. */
function factor(pct: number, { basis }: AllowanceTerms): string {
  return basis === 'normal_time'
    ? `· ${formatNumber(1 + pct / 100, 3)}`
    : `÷ ${formatNumber(1 - pct / 100, 3)}`;
}

function piecesNumbers({ standardTimeMs, piecesPerHour }: StudySummary, time: TimeWords): string {
  return `${time.figure(3_600_000)} ÷ ${time.figure(standardTimeMs ?? 0)} = ${formatNumber(piecesPerHour ?? 0, 2)}`;
}

function hoursNumbers({ standardTimeMs }: StudySummary, time: TimeWords): string {
  const hours = ((standardTimeMs ?? 0) * 100) / 3_600_000;
  return `${time.figure(standardTimeMs ?? 0)} · 100 ÷ ${time.figure(3_600_000)} = ${formatNumber(hours, 4)} h`;
}

function governsWorking(summary: StudySummary, time: TimeWords): Working {
  const { internalMs, machineMs, terms } = summary;
  const branch = governingBranch(summary);
  const own = factor(terms.allowancePct, terms);
  const machine = factor(terms.machineAllowancePct, terms);
  return {
    what: studySheet.totals.governs,
    words: words.governs.words,
    symbols: words.governs.symbols[terms.basis],
    numbers: [
      branch === 'nobody' || branch === 'alone'
        ? words.governs[branch]
        : `${time.figure(internalMs)} ${own} ${study.against} ${time.figure(machineMs)} ${machine}`,
    ],
    leftOut: null,
    source: words.governs.source,
  };
}

function uncertaintyWorking(analysis: StudiesAnalysis | null): Working {
  const { sampling = null, cycles = 0 } = analysis ?? {};
  const numbers =
    analysis === null || sampling === null
      ? []
      : [
          words.uncertainty.cycles(cycles, percentOf(sampling)),
          ...uncertaintyNumbers(analysis),
          ...(sampling < analysis.rating / 2 ? [study.progress.cannotHelp] : []),
        ];
  return {
    what: studySheet.totals.uncertainty,
    words: words.uncertainty.words,
    symbols: words.uncertainty.symbols,
    numbers,
    leftOut: null,
    source: words.uncertainty.source,
  };
}

/** The terms and their root of squares, and what no term holds because too few readings tell it. */
export function uncertaintyNumbers({
  sampling,
  rating,
  frequency,
  uncertainty,
  unknownSpread,
}: StudiesAnalysis): string[] {
  if (sampling === null || uncertainty === null) return [];
  const [h, rated, often, total] = [sampling, rating, frequency, uncertainty].map(percentOf);
  return [
    words.uncertainty.numbers(h!, rated!, often!, total!),
    ...(unknownSpread.length > 0 ? [words.uncertainty.unknown(study.and(unknownSpread))] : []),
  ];
}
