import { useState } from 'preact/hooks';
import { type SizedElement, type StandardData, timeForSize } from '../../../domain/study/standard-data';
import { timeOfWhole, type WholePart } from '../../../domain/study/whole-part';
import { study } from '../../../i18n/en/study';
import { studyData as words } from '../../../i18n/en/study-data';
import { studyStandard } from '../../../i18n/en/study-standard';
import { parseNumber } from '../../../i18n/parse-number';
import { standardFormula } from '../standard-formula';
import { wholeOf } from '../study-draft';
import { TextField } from '../text-field';
import { timeWords } from '../time-words';
import { allowanceWords } from './revisions-table';

interface Props {
  readonly data: StandardData;
  readonly sized: SizedElement;
  readonly whole: WholePart;
}

const { said } = timeWords.min;
const isSize = (size: number) => size > 0 && size < 1e9;

/** The time for a part of any size: of the element, with its interval, and of the whole part as far as it is known. */
export function SizeQuestion({ data, sized: { element, driver }, whole }: Props) {
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [parts, setParts] = useState('1');
  const drivers = new Set([driver, ...whole.elements.flatMap(({ grows }) => grows?.driver ?? [])]);
  const sizes = new Map([...drivers].map((name) => [name, parseNumber(typed[name] ?? '') ?? 0]));
  const size = sizes.get(driver)!;
  const field = (name: string) => (
    <TextField
      key={name}
      label={name}
      value={typed[name] ?? ''}
      mode="decimal"
      narrow
      onInput={(text) => setTyped({ ...typed, [name]: text })}
    />
  );
  const isAnswered =
    isSize(size) && wholeOf(parts) > 0 && timeForSize(data, size).range.standing !== 'outside';
  return (
    <section class="panel stack no-print">
      <h3>{words.ask(element)}</h3>
      <div class="row study-terms">
        {field(driver)}
        <TextField label={words.parts} value={parts} mode="numeric" narrow onInput={setParts} />
      </div>
      {typed[driver] && <Answer data={data} size={size} parts={wholeOf(parts)} />}
      {isAnswered && (
        <>
          <h3>{words.whole}</h3>
          {drivers.size > 1 && (
            <div class="row study-terms">{[...drivers].filter((name) => name !== driver).map(field)}</div>
          )}
          <Whole whole={whole} sizes={sizes} />
        </>
      )}
    </section>
  );
}

function Answer({ data, size, parts }: { data: StandardData; size: number; parts: number }) {
  if (!isSize(size) || parts < 1) return <p class="fault">{words.sizeFault}</p>;
  const { value, meanHalfWidth, partsHalfWidth, range } = timeForSize(data, size, parts);
  if (range.standing === 'outside' && range.side !== 'within') {
    return <p class="fault">{words.outside(range.side)}</p>;
  }
  return (
    <p role="status">
      <strong>{words.mean(said(value), said(meanHalfWidth))}</strong>;{' '}
      {words.each(parts, said(partsHalfWidth))}. {range.standing === 'just-outside' && words.justOutside}
    </p>
  );
}

/** What the whole part takes and of what it is made up, or what is missing for it. */
function Whole({ whole, sizes }: Pick<Props, 'whole'> & { sizes: ReadonlyMap<string, number> }) {
  if (![...sizes.values()].every(isSize)) return <p>{words.sizeFault}</p>;
  const { summary, outside } = timeOfWhole(whole, sizes);
  const missing = [...whole.missing, ...outside];
  if (missing.length > 0) return <p class="fault">{words.wholeMissing(study.and(missing))}</p>;
  const { normalTimeMs, standardTimeMs, terms } = summary;
  return (
    <>
      <p role="status">
        <strong>{studyStandard.working.gives(said(standardTimeMs!))}</strong>, NT {said(normalTimeMs!)}.{' '}
        {studyStandard.allowing(allowanceWords(terms))}
      </p>
      <ul class="small">
        {summary.elements.map(({ element, normalPerUnitMs }, place) => {
          const driver = whole.elements[place]!.grows?.driver;
          return (
            <li key={element}>
              {driver === undefined ? element : words.pair(element, driver)}: {said(normalPerUnitMs!)}
            </li>
          );
        })}
      </ul>
      <p class="small">{standardFormula(summary)}</p>
      <p class="quiet small">{words.wholeNote}</p>
    </>
  );
}
