import { useMemo } from 'preact/hooks';
import { SizeChart } from '../../../charts/size-chart';
import { fitStandardData, type SizedElement } from '../../../domain/study/standard-data';
import type { Study } from '../../../domain/study/study';
import { wholePart } from '../../../domain/study/whole-part';
import { studyData as words } from '../../../i18n/en/study-data';
import { formatNumber } from '../../../i18n/format-number';
import { timeWords } from '../time-words';
import { usePortrait } from '../use-portrait';
import { SizeQuestion } from './size-question';

const { fine, figure, unit, axisMs } = timeWords.min;
const sizeText = (size: number) => formatNumber(size, Number.isInteger(size) ? 0 : 3);

/** One element's line: constant and slope with their intervals, what speaks against it, and the time for any size. */
export function SizedElementSheet({ sized, studies }: { sized: SizedElement; studies: readonly Study[] }) {
  const data = useMemo(() => fitStandardData(sized.readings), [sized]);
  const whole = useMemo(() => wholePart(studies, sized), [studies, sized]);
  const isPortrait = usePortrait();
  if (!data) return <p>{words.warnings['few-sizes']}</p>;
  const { regression, fit, sizes, readings, warnings } = data;
  const { intercept, slope, interceptHalfWidth, slopeHalfWidth, residualDeviation, rSquared } = regression;
  const low = sizes[0]!.size;
  const high = sizes.at(-1)!.size;
  const sign = slope < 0 ? '−' : '+';
  const plain = (ms: number) => fine(ms).replace(` ${unit}`, '');
  const formula = words.formula(plain(intercept), `${sign} ${plain(Math.abs(slope))}`, unit, sized.driver);
  const lines: [string, string][] = [
    [words.constant, words.plusMinus(plain(intercept), fine(interceptHalfWidth))],
    [words.slope, words.plusMinus(plain(slope), fine(slopeHalfWidth))],
    [words.spread, fine(residualDeviation)],
    [words.fit, formatNumber(rSquared, 3)],
    [words.range, words.rangeIs(sizeText(low), sizeText(high), sizes.length, readings.length)],
  ];
  if (fit) {
    lines.push([
      words.lack,
      words.lackIs(
        formatNumber(fit.f, 2),
        fit.probability < 0.005 ? words.tiny : formatNumber(fit.probability, 2),
      ),
    ]);
  }
  const on = (x: number) => ({ x, y: (intercept + slope * x) / axisMs });
  return (
    <>
      <h2>{words.pair(sized.element, sized.driver)}</h2>
      <p class="study-formula">{formula}</p>
      <SizeChart
        id="study-sizes"
        title={words.picture(sized.element)}
        description={formula}
        width={isPortrait ? 740 : 1000}
        points={readings.map(({ size, normalMs }) => ({ x: size, y: normalMs / axisMs }))}
        line={[on(low), on(high)]}
        xTitle={sized.driver}
        xText={sizeText}
        yText={(minutes) => figure(minutes * axisMs)}
      />
      {warnings.length > 0 && (
        <ul class="fault study-notes">
          {warnings.map((warning) => (
            <li key={warning}>{words.warnings[warning]}</li>
          ))}
        </ul>
      )}
      <SizeQuestion data={data} sized={sized} whole={whole} />
      <table class="sheet study-clock">
        <tbody>
          {lines.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="quiet small">
        {words.hold} {words.source}
      </p>
    </>
  );
}
