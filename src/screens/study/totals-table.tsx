import type { ComponentChildren } from 'preact';
import type { StudiesAnalysis } from '../../domain/study/analyse-studies';
import { governingBranch } from '../../domain/study/governing-branch';
import type { StudySummary } from '../../domain/study/summarise-study';
import { study } from '../../i18n/en/study';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { formatNumber } from '../../i18n/format-number';
import { Figure, type OpenFigure } from './figure';
import { halfMethodReason } from './half-method-reason';
import type { TimeWords } from './time-words';
import { type TotalFigure, totalWorking } from './total-working';
import { WorkingNote } from './working-note';

interface Props {
  readonly summary: StudySummary;
  readonly time: TimeWords;
  readonly open: OpenFigure;
  /** How wide the standard time stands; null where nothing can be said. */
  readonly analysis: StudiesAnalysis | null;
  /** The row of the allowances, which can be changed. */
  readonly allowances: ComponentChildren;
}

/** From the normal times to the standard time, a line each. */
export function TotalsTable({ summary, time, open, analysis, allowances }: Props) {
  const { standardTimeMs, normalTimeMs, piecesPerHour } = summary;
  const noTime = halfMethodReason(summary);
  const said = (ms: number | null) => (ms === null ? null : time.said(ms));
  const hours = standardTimeMs === null ? null : formatNumber((standardTimeMs * 100) / 3_600_000, 3);
  const pieces = piecesPerHour === null ? null : formatNumber(piecesPerHour, 1);

  const wide =
    analysis?.uncertainty == null
      ? null
      : words.uncertainty(formatNumber(analysis.uncertainty * 100, 1), analysis.cycles);

  const line = (figure: TotalFigure, value: string | null, strong = false) => {
    const key = `total:${figure}`;
    return (
      <>
        <tr class={strong ? 'study-totals-strong' : ''}>
          <th scope="row">{words.totals[figure]}</th>
          <td>
            {value === null ? (
              <span class="study-absent">
                {study.none}{' '}
                <span class="small quiet">
                  {figure === 'uncertainty' && analysis ? study.progress.cycles(analysis.cycles) : noTime}
                </span>
              </span>
            ) : (
              <Figure name={words.totals[figure]} value={value} figureKey={key} open={open} />
            )}
          </td>
        </tr>
        {open.key === key && (
          <tr>
            <td class="words" colSpan={2}>
              <WorkingNote
                working={totalWorking(figure, summary, time, analysis)}
                onClose={() => open.toggle(key)}
              />
            </td>
          </tr>
        )}
      </>
    );
  };

  return (
    <table class="sheet study-totals">
      <caption>{words.totals.title}</caption>
      <tbody>
        {line('external', said(summary.externalMs))}
        {line('internal', said(summary.internalMs))}
        {line('machine', said(summary.machineMs))}
        {line('occasional', said(summary.occasionalMs))}
        {line('normal', said(normalTimeMs))}
        {allowances}
        {line('standard', said(standardTimeMs), true)}
        {line('uncertainty', wide)}
        {line('pieces', pieces)}
        {line('hours', hours)}
        {line('governs', words.governing[governingBranch(summary)])}
      </tbody>
    </table>
  );
}
