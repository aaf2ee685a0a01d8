import { describe, expect, it } from 'vitest';
import { DifferenceChart } from '../../src/charts/difference-chart';
import { MixChart } from '../../src/charts/mix-chart';
import { RunChart } from '../../src/charts/run-chart';
import { at, clipped, collisions, drawn, tags, textBoxes } from './drawn';

const words = {
  matters: 'matters',
  same: 'no difference',
  less: '◂ less time',
  more: 'more time ▸',
  axis: 'minutes a part, after − before',
};

describe('a difference with its interval', () => {
  const draw = (difference: number, lower: number, upper: number, threshold: number, width = 700) =>
    drawn(
      <DifferenceChart
        id="d"
        title="Difference"
        description="of two periods"
        width={width}
        difference={difference}
        lower={lower}
        upper={upper}
        threshold={threshold}
        words={words}
        tickText={(value) => value.toFixed(2)}
      />,
    );

  it('stands on one scale with what matters either way of no difference', () => {
    const parts = draw(-0.6, -0.8, -0.4, 0.2);
    const [band] = tags(parts, 'rect');
    const [point] = tags(parts, 'circle');
    const bar = tags(parts, 'line').find((line) => line.attributes['stroke-width'] === 4)!;
    const zero = at(band, 'x') + at(band, 'width') / 2;
    const perMinute = at(band, 'width') / 0.4;
    expect(at(point, 'cx')).toBeCloseTo(zero - 0.6 * perMinute, 6);
    expect([at(bar, 'x1'), at(bar, 'x2')]).toEqual([
      expect.closeTo(zero - 0.8 * perMinute, 6),
      expect.closeTo(zero - 0.4 * perMinute, 6),
    ]);
  });

  it('lies wholly inside the drawing, whatever the numbers, on both widths of a tablet', () => {
    for (const width of [420, 760, 1_128]) {
      for (const [d, l, u, t] of [
        [-0.96, -1.01, -0.92, 0.24],
        [0.01, -3, 3.02, 0.001],
        [5, 4.9, 5.1, 2],
        [0, 0, 0, 1e-6],
      ] as const) {
        const circle = tags(draw(d, l, u, t, width), 'circle')[0];
        expect(at(circle, 'cx')).toBeGreaterThanOrEqual(0);
        expect(at(circle, 'cx')).toBeLessThanOrEqual(width);
      }
    }
  });
});

describe('two days by mix and time', () => {
  const draw = (width: number) =>
    drawn(
      <MixChart
        id="m"
        title="Mix"
        description="two days"
        width={width}
        bars={[
          {
            label: 'Tue 24 March 2026',
            mix: 1.884,
            taken: 1.957,
            mixText: 'demanded 1:53',
            takenText: 'took 1:57',
            efficiencyText: 'efficiency 96.3 %',
          },
          {
            label: 'Fri 27 March 2026',
            mix: 1.543,
            taken: 1.596,
            mixText: 'demanded 1:33',
            takenText: 'took 1:36',
            efficiencyText: 'efficiency 96.7 %',
          },
        ]}
        axisText="attended minutes per good part"
        tickText={String}
      />,
    );

  it('have bars as long as what was demanded, and marks where each was taken, on one scale', () => {
    const parts = draw(1_128);
    const [hard, easy] = tags(parts, 'rect');
    const [hardMark, easyMark] = tags(parts, 'line').filter((line) => line.attributes['stroke-width'] === 4);
    expect(at(hard, 'width') / at(easy, 'width')).toBeCloseTo(1.884 / 1.543, 9);
    const start = at(hard, 'x');
    expect((at(hardMark, 'x1') - start) / (at(easyMark, 'x1') - start)).toBeCloseTo(1.957 / 1.596, 9);
  });

  it('have no word on another or outside, on both widths of a tablet', () => {
    for (const width of [760, 1_128]) {
      const boxes = textBoxes(draw(width), { size: 14, anchor: 'start' });
      expect(
        clipped(
          boxes.filter(({ text }) => text !== ''),
          width,
          2 * 74 + 44,
        ),
      ).toEqual([]);
      expect(collisions(boxes)).toEqual([]);
    }
  });
});

describe('a run with limits', () => {
  const point = (day: number, value: number, isSignal = false) => ({
    key: String(day),
    label: String(day),
    group: 'March 2026',
    value,
    count: '90',
    target: null,
    isChosen: false,
    isFew: false,
    isSignal,
  });
  const parts = drawn(
    <RunChart
      id="r"
      title="Run"
      description="with limits"
      width={1_128}
      height={340}
      points={[point(2, 1), point(3, 1), point(4, 1.5), point(5, 1.4), point(6, 3, true)]}
      steps={[{ from: 2, text: 'changed' }]}
      centre={{ value: 1.45, text: 'mean 1:27' }}
      limits={[{ from: 2, to: 4, lower: 1.2, upper: 1.7, lowerText: 'limit 1:12', upperText: 'limit 1:42' }]}
      targetText={null}
      countTitle="n"
      axisText="minutes"
      tickText={(value) => value.toFixed(2)}
    />,
  );

  it('draws them over their own stretch only, and names both at its end', () => {
    const dots = tags(parts, 'circle').filter(({ attributes }) => attributes.fill !== 'none');
    const halfway = (at(dots[1], 'cx') + at(dots[2], 'cx')) / 2;
    const begun = tags(parts, 'line').filter(
      (line) => Math.abs(at(line, 'x1') - halfway) < 1e-6 && at(line, 'y1') === at(line, 'y2'),
    );
    // Two limits, and the mean between them.
    const [upper, mean, lower] = begun.map((line) => at(line, 'y1')).sort((one, other) => one - other);
    expect(begun).toHaveLength(3);
    expect((lower! - mean!) / (mean! - upper!)).toBeCloseTo((1.45 - 1.2) / (1.7 - 1.45), 6);
    const texts = tags(parts, 'text').map(({ text }) => text);
    expect(texts).toEqual(expect.arrayContaining(['limit 1:12', 'limit 1:42', 'mean 1:27']));
  });

  it('rings the day that stands out, and no other', () => {
    const rings = tags(parts, 'circle').filter(({ attributes }) => attributes.fill === 'none');
    const dots = tags(parts, 'circle').filter(({ attributes }) => attributes.fill !== 'none');
    expect(rings).toHaveLength(1);
    expect(at(rings[0], 'cy')).toBe(at(dots[4], 'cy'));
  });
});
