import { useState } from 'preact/hooks';
import type { LogRecord } from '../../domain/records/log-record';
import { foreignLetters } from '../../domain/study/foreign-letters';
import type { Study } from '../../domain/study/study';
import type { StudySummary } from '../../domain/study/summarise-study';
import { studySheet } from '../../i18n/en/study-sheet';
import { ForeignList } from './foreign-list';
import { ObservationBand } from './observation-band';
import { ObservationSums } from './observation-sums';
import { SheetLegend } from './sheet-legend';
import type { TimeWords } from './time-words';
import { usePortrait } from './use-portrait';

const words = studySheet.observation;
/** Cycles that fit beside the element's name. */
const CYCLES = { landscape: 10, portrait: 6 };

interface Props {
  readonly study: Study;
  readonly summary: StudySummary;
  readonly time: TimeWords;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

/** Elements down, cycles across; a long study goes on in a further band below. */
export function ObservationSheet({ study, summary, time, onRecord }: Props) {
  const [openReading, setOpenReading] = useState<string | null>(null);
  const width = usePortrait() ? CYCLES.portrait : CYCLES.landscape;
  const cycles = [...new Set(study.readings.map(({ row }) => row.cycle))].sort((a, b) => a - b);
  const bands = Array.from({ length: Math.ceil(cycles.length / width) }, (_, band) =>
    cycles.slice(band * width, (band + 1) * width),
  );
  const lines = summary.elements.filter(({ elementClass }) => elementClass !== 'foreign');
  const letters = foreignLetters(study.readings);
  return (
    <section class="stack" aria-labelledby="study-observation">
      <h2 id="study-observation">{words.title}</h2>
      <p class="quiet small no-print">{words.note}</p>
      {bands.map((band) => (
        <ObservationBand
          key={band[0]}
          study={study}
          lines={lines}
          cycles={band}
          width={width}
          letters={letters}
          time={time}
          openReading={openReading}
          onToggle={(id) => setOpenReading(id === openReading ? null : id)}
          onRecord={onRecord}
        />
      ))}
      <SheetLegend readings={study.readings} />
      <ObservationSums study={study} lines={lines} time={time} />
      <ForeignList letters={letters} readings={study.readings} time={time} />
    </section>
  );
}
