import { useState } from 'preact/hooks';
import { type StandardData, timeForSize } from '../../../domain/study/standard-data';
import { studyData as words } from '../../../i18n/en/study-data';
import { parseNumber } from '../../../i18n/parse-number';
import { wholeOf } from '../study-draft';
import { TextField } from '../text-field';
import { timeWords } from '../time-words';

/** The time for a part of any size, with its interval; far outside those studied there is a sentence instead. */
export function SizeQuestion({ data, driver }: { data: StandardData; driver: string }) {
  const [size, setSize] = useState('');
  const [parts, setParts] = useState('1');
  return (
    <section class="panel stack no-print">
      <h3>{words.ask}</h3>
      <div class="row study-terms">
        <TextField label={driver} value={size} mode="decimal" narrow onInput={setSize} />
        <TextField label={words.parts} value={parts} mode="numeric" narrow onInput={setParts} />
      </div>
      <Answer data={data} size={parseNumber(size) ?? 0} parts={wholeOf(parts)} isAsked={size !== ''} />
    </section>
  );
}

function Answer(props: { data: StandardData; size: number; parts: number; isAsked: boolean }) {
  const { data, size, parts, isAsked } = props;
  if (!isAsked) return null;
  if (!(size > 0 && size < 1e9) || parts < 1) return <p class="fault">{words.sizeFault}</p>;
  const { value, meanHalfWidth, partsHalfWidth, range } = timeForSize(data, size, parts);
  if (range.standing === 'outside' && range.side !== 'within') {
    return <p class="fault">{words.outside(range.side)}</p>;
  }
  const { said } = timeWords.min;
  return (
    <p role="status">
      <strong>{words.mean(said(value), said(meanHalfWidth))}</strong>;{' '}
      {words.each(parts, said(partsHalfWidth))}. {range.standing === 'just-outside' && words.justOutside}
    </p>
  );
}
