import { useEffect, useRef, useState } from 'preact/hooks';
import { excludeReading } from '../../application/study/exclude-reading';
import { rateReading } from '../../application/study/rate-reading';
import { restoreReading } from '../../application/study/restore-reading';
import type { LogRecord } from '../../domain/records/log-record';
import type { Reading, Study } from '../../domain/study/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import { CauseChooser } from './cause-chooser';
import { causeWords } from './cause-words';
import { elementWords } from './element-words';
import { NoteField } from './note-field';
import { RatingCorrection } from './rating-correction';
import type { TimeWords } from './time-words';

const words = studySheet.reading;

interface Props {
  readonly study: Study;
  readonly reading: Reading;
  readonly time: TimeWords;
  readonly onRecord: (records: readonly LogRecord[]) => void;
  readonly onClose: () => void;
}

/** What can be decided about one reading; whatever is decided, the reading stays on the sheet. */
export function ReadingEditor({ study, reading, time, onRecord, onClose }: Props) {
  const { bench, isReadOnly } = useApp();
  const { id, isMerged, row } = reading;
  const { cycle, observedMs, ratingPct, excluded, work } = row;
  const element = elementWords(row);
  const [isChoosing, setIsChoosing] = useState(false);
  const editor = useRef<HTMLElement>(null);
  useEffect(() => editor.current?.scrollIntoView({ block: 'nearest' }), [isChoosing]);
  return (
    <section class="study-working stack" aria-label={`${element}, ${words.cycle(cycle)}`} ref={editor}>
      <div class="row spread">
        <strong>
          {element}, {words.cycle(cycle)}
        </strong>
        <button type="button" class="button study-close" onClick={onClose}>
          {words.close}
        </button>
      </div>
      <p class="number">
        {observedMs === null
          ? words.noTime
          : words.facts(time.said(observedMs), ratingPct, time.said((observedMs * ratingPct) / 100))}
        {isMerged && observedMs !== null && ` ${words.merged}`}
      </p>
      {excluded !== null && (
        <div class="row">
          <p>{words.isOut(causeWords(excluded))}</p>
          {!isMerged && (
            <button
              type="button"
              class="button"
              disabled={isReadOnly}
              onClick={() => onRecord(restoreReading(bench, study, id))}
            >
              {words.takeBack}
            </button>
          )}
        </div>
      )}
      {excluded === null && !isChoosing && row.elementClass !== 'foreign' && (
        <div>
          <button type="button" class="button" disabled={isReadOnly} onClick={() => setIsChoosing(true)}>
            {words.leaveOut} …
          </button>
        </div>
      )}
      {excluded === null && isChoosing && (
        <CauseChooser
          onChoose={(cause) => {
            onRecord(excludeReading(bench, study, id, cause));
            setIsChoosing(false);
          }}
        />
      )}
      {work === 'machine' || row.elementClass === 'foreign' ? (
        <p class="quiet">{row.elementClass === 'foreign' ? words.foreign : words.machine}</p>
      ) : (
        observedMs !== null && (
          <RatingCorrection
            key={ratingPct}
            ratingPct={ratingPct}
            disabled={isReadOnly}
            onKeep={(pct) => onRecord(rateReading(bench, study, id, pct))}
          />
        )
      )}
      <NoteField key={`${id} ${row.element}`} study={study} reading={reading} onRecord={onRecord} />
      <p class="quiet small">{words.kept}</p>
    </section>
  );
}
