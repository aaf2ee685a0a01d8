import type { LogRecord } from '../../domain/records/log-record';
import type { Study } from '../../domain/study/study';
import { FEWEST_FOR_INTERVAL } from '../../domain/study/study-progress';
import { study } from '../../i18n/en/study';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { formatNumber } from '../../i18n/format-number';
import { ChoiceRow } from './choice-row';
import { DotStrip } from './dot-strip';
import { type ElementEvidence, type ElementFigure, elementWorking } from './element-working';
import { Figure, type OpenFigure } from './figure';
import { FrequencyChoice } from './frequency-choice';
import { kindWords } from './kind-words';
import type { RequiredForm } from './needed-working';
import { WorkingNote } from './working-note';

const COLUMNS = 10;

interface Props {
  readonly evidence: ElementEvidence;
  readonly breakPoint: string;
  readonly open: OpenFigure;
  readonly onForm: (form: RequiredForm) => void;
  readonly study: Study;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

export function SummaryLine({ evidence, breakPoint, open, onForm, study: shownStudy, onRecord }: Props) {
  const { summary, time, form } = evidence;
  const { element, elementNo, n, excluded, required } = summary;
  const prefix = `element:${elementNo}:`;
  const opened = open.key?.startsWith(prefix) ? (open.key.slice(prefix.length) as ElementFigure) : null;

  const cell = (
    figure: ElementFigure,
    name: string,
    value: string | null,
    reason: string = words.reasons.noReading,
  ) =>
    value === null ? (
      <span class="study-absent">
        {study.none} <span class="small quiet">{reason}</span>
      </span>
    ) : (
      <Figure name={`${name}, ${element}`} value={value} figureKey={prefix + figure} open={open} />
    );
  const shown = (value: number | null, write: (value: number) => string) =>
    value === null ? null : write(value);
  const columns = words.columns;
  const isFew = n >= 2 && n < FEWEST_FOR_INTERVAL;

  return (
    <>
      <tr>
        <td>{elementNo}</td>
        <td class="words">
          <strong>{element}</strong>
          {breakPoint && <div class="quiet small">{breakPoint}</div>}
          <div class="quiet small">{kindWords(summary)}</div>
        </td>
        <td>
          {cell('n', columns.n, String(n))}
          {excluded > 0 && <div class="small quiet study-out">{words.leftOutCount(excluded)}</div>}
        </td>
        <td>{cell('observed', columns.observed, shown(summary.observedMeanMs, time.figure))}</td>
        <td>
          {cell(
            'rating',
            columns.rating,
            shown(summary.meanRatingPct, (pct) => formatNumber(pct, 1)),
          )}
        </td>
        <td>{cell('normal', columns.normal, shown(summary.normalMeanMs, time.figure))}</td>
        <td>
          {cell(
            'frequency',
            columns.frequency,
            words.onceIn(summary.unitsPerOccurrence * summary.partsPerCycle),
          )}
        </td>
        <td>{cell('perUnit', columns.perUnit, shown(summary.normalPerUnitMs, time.figure))}</td>
        <td>
          {isFew && summary.precision !== null ? (
            <button
              type="button"
              class="study-figure"
              aria-expanded={opened === 'precision'}
              onClick={() => open.toggle(`${prefix}precision`)}
            >
              {words.tooFew}
              <DotStrip
                values={ratedTimes(evidence)}
                name={`${columns.precision}, ${element}: ${words.fewReadings(n)}`}
                write={time.figure}
              />
            </button>
          ) : (
            cell(
              'precision',
              columns.precision,
              shown(n < 2 ? null : summary.precision, (share) => `± ${formatNumber(share * 100, 1)} %`),
              n === 1 ? words.reasons.oneReading : words.reasons.noReading,
            )
          )}
        </td>
        <td>
          {cell(
            'needed',
            columns.needed,
            isFew || required === null ? null : formatNumber(required[form]),
            words.reasons.fiveFirst,
          )}
        </td>
      </tr>
      {opened && (
        <tr>
          <td class="words" colSpan={COLUMNS}>
            <WorkingNote
              working={elementWorking(opened, evidence)}
              onClose={() => open.toggle(open.key ?? '')}
            >
              {opened === 'needed' && (
                <ChoiceRow label={words.form} options={words.forms} value={form} onChoose={onForm} />
              )}
              {opened === 'frequency' && summary.elementClass === 'occasional' && (
                <FrequencyChoice
                  study={shownStudy}
                  element={element}
                  elementNo={elementNo}
                  onRecord={onRecord}
                />
              )}
            </WorkingNote>
          </td>
        </tr>
      )}
    </>
  );
}

function ratedTimes({ rows }: ElementEvidence): number[] {
  return rows.flatMap(({ excluded, observedMs, ratingPct }) =>
    excluded === null && observedMs !== null ? [(observedMs * ratingPct) / 100] : [],
  );
}
