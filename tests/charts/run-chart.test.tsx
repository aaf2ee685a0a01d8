import { describe, expect, it } from 'vitest';
import { RunChart, type RunPoint, type RunStep } from '../../src/charts/run-chart';
import { at, clipped, collisions, drawn, tags, textBoxes } from './drawn';

const point = (day: number, value: number, change: Partial<RunPoint> = {}): RunPoint => ({
  key: String(day),
  label: String(day),
  group: 'March 2026',
  value,
  count: '90',
  target: null,
  isChosen: false,
  isFew: false,
  ...change,
});

const draw = (
  points: readonly RunPoint[],
  {
    width = 1_128,
    centre = 1.5,
    targetText = '',
    steps = [] as readonly RunStep[],
    earlier = [] as readonly number[],
  } = {},
) =>
  drawn(
    <RunChart
      id="r"
      title="Run of M"
      description="three days"
      width={width}
      height={340}
      points={points}
      steps={steps}
      earlier={earlier}
      centre={{ value: centre, text: 'median 1:30' }}
      targetText={targetText || null}
      countTitle="n"
      axisText="minutes"
      tickText={(value) => value.toFixed(2)}
    />,
  );

describe('RunChart', () => {
  it('sets the points in time order at equal steps, at their values', () => {
    // Values 1 and 2: with 8 % of air 0.92 to 2.08, wanted step 1.16/5 = 0.232, next round one 0.25: from 0.75 to
    // 2.25. The plot is 30 to 340 − 74 = 266: 236 px for 1.5. Value 1 lies 0.25/1.5 above the bottom, 2 1.25/1.5.
    const circles = tags(draw([point(2, 1), point(3, 2), point(4, 1.5)]), 'circle');
    expect(circles.map((circle) => at(circle, 'cy'))).toEqual([
      expect.closeTo(266 - (0.25 / 1.5) * 236, 6),
      expect.closeTo(266 - (1.25 / 1.5) * 236, 6),
      expect.closeTo(266 - (0.75 / 1.5) * 236, 6),
    ]);
    const [a, b, c] = circles.map((circle) => at(circle, 'cx'));
    expect(b! - a!).toBeCloseTo(c! - b!, 6);
    expect(a).toBe(64 + 18);
  });

  it('draws the median where it is told, wherever the points lie', () => {
    // The same scale as above; 1.25 lies 0.5/1.5 of the plot above its bottom, and no point is there.
    const median = tags(draw([point(2, 1), point(3, 2), point(4, 1)], { centre: 1.25 }), 'line').find(
      (each) => each.attributes.stroke === 'var(--ink)',
    );
    expect(at(median, 'y1')).toBeCloseTo(266 - (0.5 / 1.5) * 236, 6);
    expect(at(median, 'y2')).toBe(at(median, 'y1'));
  });

  it('draws the target as it stood on each day, with a step where it changed and a gap where there was none', () => {
    const points = [
      point(2, 1, { target: 1 }),
      point(3, 2, { target: 1 }),
      point(4, 1.5, { target: 2 }),
      point(5, 1.5),
      point(6, 1.5, { target: 2 }),
    ];
    const target = tags(draw(points, { targetText: 'target 2:00' }), 'path').find(
      (each) => each.attributes['stroke-dasharray'],
    );
    const y = (value: number) => 266 - ((value - 0.75) / 1.5) * 236;
    // One stroke from the left end, a step up between the second and the third day, then a new stroke.
    const d = String(target?.attributes.d);
    expect(d.match(/M/g)).toHaveLength(2);
    expect(d.startsWith(`M64 ${y(1)} H`)).toBe(true);
    expect(d.match(/V/g)).toHaveLength(1);
    expect(Number(/V([\d.]+)/.exec(d)?.[1])).toBeCloseTo(y(2), 6);
  });

  it('marks the day that is chosen, behind and on its point', () => {
    const elements = draw([point(2, 1), point(3, 2, { isChosen: true })]);
    const [band] = tags(elements, 'rect');
    const chosen = tags(elements, 'circle')[1];
    expect(at(band, 'x') + at(band, 'width') / 2).toBeCloseTo(at(chosen, 'cx'), 6);
    expect(at(chosen, 'r')).toBeGreaterThan(at(tags(elements, 'circle')[0], 'r'));
    expect(tags(draw([point(2, 1)]), 'rect')).toEqual([]);
  });

  it('draws a day of few parts hollow, and any other full', () => {
    const [full, few] = tags(draw([point(2, 1), point(3, 2, { isFew: true })]), 'circle');
    expect(full?.attributes.fill).toBe('var(--ink)');
    expect(few?.attributes).toMatchObject({ fill: 'var(--paper)', stroke: 'var(--ink)' });
  });

  it('breaks the run where the method changed: a named upright line there, no stroke across, the median after it', () => {
    const points = [point(2, 2), point(3, 2), point(4, 1), point(5, 1)];
    const elements = draw(points, { centre: 1, steps: [{ from: 2, text: 'method revision 2' }] });
    const [, second, third] = tags(elements, 'circle').map((each) => at(each, 'cx'));
    const step = (second! + third!) / 2;
    const upright = tags(elements, 'line').filter((each) => at(each, 'x1') === at(each, 'x2'));
    expect(upright.map((each) => at(each, 'x1'))).toEqual([step]);
    const name = tags(elements, 'text').find(({ text }) => text === 'method revision 2');
    expect(at(name, 'x')).toBe(step + 6);
    const run = tags(elements, 'path').find((each) => each.attributes.stroke === 'var(--quiet)');
    expect(String(run?.attributes.d).match(/M/g)).toHaveLength(2);
    const median = tags(elements, 'line').find(
      (each) => each.attributes.stroke === 'var(--ink)' && at(each, 'y1') === at(each, 'y2'),
    );
    expect(at(median, 'x1')).toBe(step);
  });

  it('names steps that are close on rows of their own, three at most and the newest first, none struck through', () => {
    const points = Array.from({ length: 30 }, (_, place) => point(place + 1, 1 + (place % 2)));
    // The words of 8 would have room beside those of 12, and the line of 10 through them.
    const words = (from: number) => (from === 8 ? 'new jig' : `method revision ${from}`);
    const steps = [6, 8, 10, 12].map((from) => ({ from, text: words(from) }));
    const elements = draw(points, { width: 760, steps });
    const names = tags(elements, 'text').filter(({ text }) => /method|jig/.test(text));
    expect(names.map(({ text }) => text)).toEqual([12, 10, 8].map(words));
    expect(new Set(names.map((name) => at(name, 'y'))).size).toBe(3);
    const upright = tags(elements, 'line').filter((each) => at(each, 'x1') === at(each, 'x2'));
    expect(upright).toHaveLength(4);
    for (const name of names) {
      const struck = upright.filter(
        (line) =>
          at(line, 'x1') > at(name, 'x') &&
          at(line, 'x1') < at(name, 'x') + (name.text === 'new jig' ? 45 : 110) &&
          Math.min(at(line, 'y1'), at(line, 'y2')) < at(name, 'y') - 10,
      );
      expect(struck).toEqual([]);
    }
    expect(collisions(textBoxes(elements, { size: 14, anchor: 'middle' }))).toEqual([]);
  });

  it('draws the level of what was before each step over its own days', () => {
    const points = [point(2, 2), point(3, 2), point(4, 1), point(5, 1)];
    const steps = [{ from: 2, text: 'method revision 2' }];
    const elements = draw(points, { centre: 1, steps, earlier: [2] });
    const [, second, third] = tags(elements, 'circle').map((each) => at(each, 'cx'));
    const levels = tags(elements, 'line').filter(
      (each) => each.attributes.stroke === 'var(--ink)' && at(each, 'y1') === at(each, 'y2'),
    );
    const before = levels.find((each) => at(each, 'y1') === at(tags(elements, 'circle')[0], 'cy'));
    expect([at(before, 'x1'), at(before, 'x2')]).toEqual([64, (second! + third!) / 2]);
    expect(levels).toHaveLength(2);
  });

  it('draws a single day in the middle, and a run of equal values on one level', () => {
    const [only] = tags(draw([point(2, 1.2)], { centre: 1.2 }), 'circle');
    expect(Number.isFinite(at(only, 'cx')) && Number.isFinite(at(only, 'cy'))).toBe(true);
    const level = tags(draw([point(2, 1.2), point(3, 1.2)], { centre: 1.2 }), 'circle').map((each) =>
      at(each, 'cy'),
    );
    expect(level[0]).toBe(level[1]);
    const nothing = tags(draw([point(2, 0)], { centre: 0 }), 'circle');
    expect(Number.isFinite(at(nothing[0], 'cy'))).toBe(true);
  });

  it('always labels the newest day', () => {
    const many = Array.from({ length: 60 }, (_, day) =>
      point((day % 28) + 1, 1 + (day % 7) / 10, { key: String(day) }),
    );
    const texts = tags(draw(many, { width: 760 }), 'text');
    const lastX = at(tags(draw(many, { width: 760 }), 'circle').at(-1), 'cx');
    expect(texts.some((text) => Math.abs(at(text, 'x') - lastX) < 1e-6 && text.text === '4')).toBe(true);
  });

  it.each([
    [760, 20],
    [760, 80],
    [728, 1],
    [1_128, 20],
    [1_128, 120],
  ])('has no text clipped or on another at a width of %i with %i days', (width, count) => {
    const points = Array.from({ length: count }, (_, place) =>
      point((place % 28) + 1, 1.4 + ((place * 7) % 5) / 10, {
        key: String(place),
        count: '1234',
        group: ['March 2026', 'April 2026', 'September 2026'][Math.floor(place / 3) % 3]!,
        target: 1.51,
      }),
    );
    // The median lies a hundredth beside the target, so their words must give way to each other.
    const steps = count > 1 ? [{ from: count - 1, text: 'method revision 12' }] : [];
    const elements = draw(points, { width, centre: 1.5, targetText: 'target 1:31', steps });
    const boxes = textBoxes(elements, { size: 14, anchor: 'middle' });
    const starts = new Set(['minutes', 'n', 'median 1:30', 'target 1:31', 'method revision 12']);
    const placed = boxes.map((box) =>
      starts.has(box.text)
        ? {
            ...box,
            left: (box.left + box.right) / 2,
            right: (box.left + box.right) / 2 + (box.right - box.left),
          }
        : box,
    );
    expect(collisions(placed)).toEqual([]);
    expect(clipped(placed, width, 340)).toEqual([]);
  });
});
