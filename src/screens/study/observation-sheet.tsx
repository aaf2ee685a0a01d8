import { useMemo, useState } from 'preact/hooks';
import { excludeReading } from '../../application/study/exclude-reading';
import type { LogRecord } from '../../domain/records/log-record';
import type { ExclusionCause } from '../../domain/study/exclusion-cause';
import { flagReadings } from '../../domain/study/flag-readings';
import { foreignLetters } from '../../domain/study/foreign-letters';
import type { Study } from '../../domain/study/study';
import type { StudySummary } from '../../domain/study/summarise-study';
import { studySheet } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import { ForeignList } from './foreign-list';
import { ObservationBand } from './observation-band';
import { ObservationSums } from './observation-sums';
import { SheetLegend } from './sheet-legend';
import type { TimeWords } from './time-words';
import { usePortrait } from './use-portrait';
import { WorthALook } from './worth-a-look';

const words = studySheet.observation;
/** Cycles that fit beside the element's name, and with readings of five digits. */
const CYCLES = { landscape: 10, portrait: 6 };
/** With ratings in brackets. */
const BRACKETED = { landscape: 9, portrait: 6 };
const LONG_CYCLES = { landscape: 8, portrait: 5 };
const RELOADED: ExclusionCause = 'page-reloaded';
/** Cycles on one sheet: more would be slow to draw, and nobody reads more at once. */
const SHEET = 30;

interface Props {
  readonly study: Study;
  readonly summary: StudySummary;
  readonly time: TimeWords;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

/** Elements down, cycles across; a long study goes on in a further band below. */
export function ObservationSheet({ study, summary, time, onRecord }: Props) {
  const { bench } = useApp();
  const [openReading, setOpenReading] = useState<string | null>(null);
  const [sheet, setSheet] = useState(0);
  const longest = Math.max(0, ...study.readings.map(({ row }) => row.observedMs ?? 0));
  const hasBrackets = study.readings.some(({ judged }) => judged === false);
  const fit = time.reading(longest).length > 4 ? LONG_CYCLES : hasBrackets ? BRACKETED : CYCLES;
  const width = usePortrait() ? fit.portrait : fit.landscape;
  const cycles = [...new Set(study.readings.map(({ row }) => row.cycle))].sort((a, b) => a - b);
  const shown = cycles.slice(sheet * SHEET, (sheet + 1) * SHEET);
  const bands = Array.from({ length: Math.ceil(shown.length / width) }, (_, band) =>
    shown.slice(band * width, (band + 1) * width),
  );
  const lines = summary.elements.filter(({ elementClass }) => elementClass !== 'foreign');
  const letters = foreignLetters(study.readings, study.heading?.lanes);
  const flagged = useMemo(() => flagReadings(study.readings), [study]);
  const flaggedIds = new Set(flagged.map(({ reading: { id } }) => id));
  const toggle = (id: string) => setOpenReading(id === openReading ? null : id);
  /** Turns to the sheet with the reading on it, and opens it there. */
  const openAt = (id: string) => {
    const cycle = study.readings.find((reading) => reading.id === id)?.row.cycle ?? 0;
    setSheet(Math.max(0, Math.floor(cycles.indexOf(cycle) / SHEET)));
    setOpenReading(id);
  };
  const leaveOut = (id: string) => onRecord(excludeReading(bench, study, id, RELOADED));
  return (
    <section class="stack" aria-labelledby="study-observation">
      <h2 id="study-observation">{words.title}</h2>
      <p class="quiet small no-print">{words.note}</p>
      <WorthALook flagged={flagged} time={time} onOpen={openAt} onLeaveOut={leaveOut} />
      {cycles.length > SHEET && (
        <div class="row no-print">
          <button type="button" class="button" disabled={sheet === 0} onClick={() => setSheet(sheet - 1)}>
            {words.earlier}
          </button>
          <p role="status">{words.shown(shown[0] ?? 0, shown.at(-1) ?? 0, cycles.length)}</p>
          <button
            type="button"
            class="button"
            disabled={(sheet + 1) * SHEET >= cycles.length}
            onClick={() => setSheet(sheet + 1)}
          >
            {words.later}
          </button>
        </div>
      )}
      {bands.map((band) => (
        <ObservationBand
          key={band[0]}
          study={study}
          lines={lines}
          cycles={band}
          width={width}
          letters={letters}
          flagged={flaggedIds}
          time={time}
          openReading={openReading}
          onToggle={toggle}
          onRecord={onRecord}
        />
      ))}
      <SheetLegend readings={study.readings} />
      <ObservationSums study={study} lines={lines} time={time} />
      <ForeignList
        study={study}
        letters={letters}
        time={time}
        openReading={openReading}
        onToggle={toggle}
        onRecord={onRecord}
      />
    </section>
  );
}
