import { useMemo, useState } from 'preact/hooks';
import type { LogRecord } from '../../domain/records/log-record';
import { isSameCode } from '../../domain/shop/known-code';
import { analyseStudies, type StudyInAnalysis } from '../../domain/study/analyse-studies';
import type { Study } from '../../domain/study/study';
import { studyClock } from '../../domain/study/study-clock';
import { studyStability } from '../../domain/study/study-stability';
import { summariseStudy } from '../../domain/study/summarise-study';
import { unseenElements } from '../../domain/study/unseen-elements';
import { study as allWords } from '../../i18n/en/study';
import { studyReduce } from '../../i18n/en/study-reduce';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { studyStandard } from '../../i18n/en/study-standard';
import { useApp } from '../app';
import { AllowancesLine } from './allowances-line';
import { ChoiceRow } from './choice-row';
import { ClockPanel } from './clock-panel';
import { CombinationPanel } from './combination-panel';
import { ExclusionNotes } from './exclusion-notes';
import type { OpenFigure } from './figure';
import { halfMethodReason } from './half-method-reason';
import type { RequiredForm } from './needed-working';
import { ObservationSheet } from './observation-sheet';
import { OneLaneNote } from './one-lane-note';
import { PaperFoot } from './paper-foot';
import { percentOf } from './percent-of';
import { SaveReadings } from './save-readings';
import { SheetAnswer } from './sheet-answer';
import { SheetHead } from './sheet-head';
import { standardFormula } from './standard-formula';
import { SteadyPanel } from './steady-panel';
import { StudyCautions } from './study-cautions';
import { STANDARD_OF } from './study-places';
import { SummaryTable } from './summary-table';
import { TargetPanel } from './target-panel';
import { TotalsTable } from './totals-table';
import { useTimeUnit } from './use-time-unit';

interface Props {
  readonly study: Study;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

export function OpenStudySheet({ study, onRecord }: Props) {
  const { bench, go } = useApp();
  const code = study.heading?.partCode ?? study.readings[0]?.row.carried.part ?? '';
  const part = bench.shop.value.parts.find((one) =>
    study.heading ? one.id === study.heading.part : isSameCode(one.code, code),
  );
  const { unit, time, choose } = useTimeUnit();
  const [form, setForm] = useState<RequiredForm>('t');
  const [openKey, setOpenKey] = useState<string | null>(null);
  const open: OpenFigure = {
    key: openKey,
    toggle: (key) => setOpenKey(key === openKey ? null : key),
  };
  const rows = useMemo(() => study.readings.map(({ row }) => row), [study]);
  const summary = useMemo(() => (rows.length > 0 ? summariseStudy(rows) : null), [rows]);
  const stability = useMemo(() => studyStability(rows), [rows]);
  const analysis = useMemo(
    () => summary && analyseStudies([{ ...asOne(study), rows }], summary.terms),
    [study, rows, summary],
  );
  // A long study has thousands of readings: opening a figure must not draw them again.
  const observation = useMemo(
    () => summary && <ObservationSheet study={study} summary={summary} time={time} onRecord={onRecord} />,
    [study, summary, time, onRecord],
  );
  if (!summary) {
    return (
      <>
        <SheetHead study={study} />
        <p>{words.nothing}</p>
      </>
    );
  }
  const unseen = unseenElements(study);
  const clock = studyClock(study);
  const isUsable = clock?.usable !== false && stability.trend === null;
  const ofTheJob = summary.elements.filter(({ elementClass }) => elementClass !== 'foreign');
  const breakPoints = new Map(
    study.method.map(({ name, breakPoint }) => [name, breakPoint || allWords.prepare.breakPointMissing]),
  );
  return (
    <>
      {clock && !clock.usable && <p class="fault">{studyReduce.clock.bad(percentOf(clock.errorShare))}</p>}
      <SheetAnswer
        study={study}
        summary={summary}
        time={time}
        reason={halfMethodReason(summary)}
        unseen={unseen}
        isUsable={isUsable}
      />
      <OneLaneNote study={study} />
      <SheetHead study={study} />
      <div class="row study-switches no-print">
        <ChoiceRow label={words.unit} options={words.units} value={unit} onChoose={choose} />
      </div>
      <p class="quiet small no-print">{words.tapToExplain}</p>
      <SummaryTable
        rows={rows}
        summary={summary}
        breakPoints={breakPoints}
        time={time}
        form={form}
        open={open}
        onForm={setForm}
        study={study}
        onRecord={onRecord}
      />
      <ExclusionNotes elements={ofTheJob.map(({ element }) => element)} rows={rows} summary={summary} />
      {unseen.length > 0 && <p class="fault">{words.unseen(allWords.and(unseen))}</p>}
      <TotalsTable
        summary={summary}
        time={time}
        open={open}
        analysis={analysis}
        allowances={<AllowancesLine study={study} onRecord={onRecord} />}
      />
      <StudyCautions />
      <PaperFoot standardFormula={standardFormula(summary)} />
      <div class="stack no-print">
        <TargetPanel
          study={study}
          standardTimeMs={summary.standardTimeMs}
          isIncomplete={unseen.length > 0}
          isUsable={isUsable}
          time={time}
        />
        <div class="row">
          {part && (
            <button type="button" class="button" onClick={() => go('study', STANDARD_OF + part.id)}>
              {studyStandard.list.sheet}
            </button>
          )}
          <button type="button" class="button" onClick={() => print()}>
            {studyReduce.paper.print}
          </button>
          <SaveReadings study={study} />
        </div>
      </div>
      <CombinationPanel summary={summary} targetMs={part?.targetMs ?? null} time={time} />
      <SteadyPanel stability={stability} time={time} />
      <ClockPanel study={study} time={time} onRecord={onRecord} />
      {observation}
    </>
  );
}

/** One study is an analysis of one. */
function asOne({ id, title, readings, frequencies }: Study): Omit<StudyInAnalysis, 'rows'> {
  const seen = readings.flatMap(({ row }) =>
    frequencies.get(row.elementNo) === 'observed' ? [row.element] : [],
  );
  return { id, title, operator: '', day: '', seen: [...new Set(seen)] };
}
