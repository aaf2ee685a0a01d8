import { useState } from 'preact/hooks';
import { setFrequency } from '../../application/study/set-frequency';
import type { LogRecord } from '../../domain/records/log-record';
import { type FrequencySource, seenFrequency } from '../../domain/study/seen-frequency';
import type { Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { studyReduce } from '../../i18n/en/study-reduce';
import { formatNumber } from '../../i18n/format-number';
import { useApp } from '../app';
import { wholeOf } from './study-draft';
import { TextField } from './text-field';

const words = studyReduce.frequency;

interface Props {
  readonly study: Study;
  readonly element: string;
  readonly elementNo: number;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

/** How often an occasional element comes: as the method says, as a record says, or as it was seen, with its interval. */
export function FrequencyChoice({ study, element, elementNo, onRecord }: Props) {
  const { bench, isReadOnly } = useApp();
  const [units, setUnits] = useState('');
  const seen = seenFrequency(
    study.readings.map(({ row }) => row),
    element,
  );
  const keep = (unitsPerOccurrence: number, source: FrequencySource) =>
    onRecord(setFrequency(bench, study, elementNo, { unitsPerOccurrence, source }));
  const once = (share: number) => formatNumber(1 / share, share > 0.1 ? 1 : 0);
  return (
    <div class="stack study-after-working">
      <p>
        {words.source}: <strong>{words.sources[study.frequencies.get(elementNo) ?? 'method']}</strong>
      </p>
      {seen && (
        <p>
          {words.seen(seen.occurrences, seen.workUnits)}
          {seen.occurrences === 0 ? words.never : words.between(once(seen.lower), once(seen.upper))}{' '}
          {seen.tooFewSeen && words.few} <span class="quiet small">{words.interval}</span>
        </p>
      )}
      <div class="row study-own-cause">
        {seen && seen.occurrences > 0 && (
          <button
            type="button"
            class="button"
            disabled={isReadOnly}
            onClick={() => keep(seen.workUnits / seen.occurrences, 'observed')}
          >
            {words.observe(once(seen.perUnit))}
          </button>
        )}
        <TextField label={words.record} value={units} mode="numeric" narrow onInput={setUnits} />
        <span>{allWords.prepare.unitsOf}</span>
        <button
          type="button"
          class="button"
          disabled={isReadOnly || wholeOf(units) < 1}
          onClick={() => keep(wholeOf(units), 'record')}
        >
          {words.keep}
        </button>
      </div>
    </div>
  );
}
