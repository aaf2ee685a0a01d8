import { describe, expect, it } from 'vitest';
import { type PartLine, PartTargetChart } from '../../src/charts/part-target-chart';
import { at, clipped, collisions, drawn, tags, textBoxes } from './drawn';

const line = (change: Partial<PartLine> = {}): PartLine => ({
  key: 'm',
  label: 'M',
  note: 'n 90',
  mean: 1,
  spread: { low: 0.75, high: 1.25 },
  dots: [],
  target: { value: 1.5, text: 'target 1:30' },
  verdict: '◂ 33 % faster than target',
  side: 'faster',
  verdictNote: '1:00 (1.00 min)',
  ...change,
});

const draw = (lines: readonly PartLine[], width = 1_128) =>
  drawn(
    <PartTargetChart
      id="c"
      title="The day"
      description="M inside its target"
      width={width}
      lines={lines}
      axisText="minutes"
      tickText={(value) => String(value)}
    />,
  );

// At a width of 1128 the plot reaches from 150 + 12 = 162 to 1128 − 256 − 16 = 856: 694 px. With a longest value of
// 1.5 the ticks step by 0.25 (1.5/7 = 0.214, the next round step), so a minute is 694/1.5 = 462.67 px.
const perMinute = 694 / 1.5;

describe('PartTargetChart', () => {
  it('draws the bar from nothing to the mean', () => {
    const [bar] = tags(draw([line()]), 'rect');
    expect(at(bar, 'x')).toBe(162);
    expect(at(bar, 'width')).toBeCloseTo(perMinute, 6);
  });

  it('draws the mark of the target at the target, taller than the bar', () => {
    const elements = draw([line()]);
    const mark = tags(elements, 'line').find((each) => at(each, 'stroke-width') === 3);
    expect(at(mark, 'x1')).toBeCloseTo(162 + 1.5 * perMinute, 6);
    const [bar] = tags(elements, 'rect');
    expect(at(mark, 'y2') - at(mark, 'y1')).toBeGreaterThan(at(bar, 'height'));
  });

  it('draws the spread between the ends it is given', () => {
    const spread = tags(draw([line()]), 'path').find((each) => String(each.attributes.d).includes('H'));
    const places = (String(spread?.attributes.d).match(/[\d.]+/g) ?? []).map(Number);
    const [low, high] = [162 + 0.75 * perMinute, 162 + 1.25 * perMinute];
    // A cap at the low end, the line at the middle of the row, a cap at the high end.
    const wanted = [low, 34, 46, low, 40, high, high, 34, 46];
    expect(places).toEqual(wanted.map((place) => expect.closeTo(place, 6)));
  });

  it('draws few parts as dots, and then no bar', () => {
    const elements = draw([line({ dots: [0.9, 1.1], spread: { low: 0.9, high: 1.1 } })]);
    expect(tags(elements, 'circle').map((dot) => at(dot, 'cx'))).toEqual([
      expect.closeTo(162 + 0.9 * perMinute, 6),
      expect.closeTo(162 + 1.1 * perMinute, 6),
    ]);
    // One rect is left: the mark of the mean.
    expect(tags(elements, 'rect')).toHaveLength(1);
  });

  it('leaves out the mark where there is no target, and the spread where there is none', () => {
    const elements = draw([line({ target: null, spread: null, verdict: 'no target', side: 'level' })]);
    expect(tags(elements, 'path')).toEqual([]);
    expect(tags(elements, 'line').filter((each) => at(each, 'stroke-width') === 3)).toEqual([]);
  });

  it('is named and described for those who do not see it', () => {
    const elements = draw([line()]);
    const [svg] = tags(elements, 'svg');
    expect(svg?.attributes).toMatchObject({ role: 'img', 'aria-labelledby': 'c-title c-desc' });
    expect(tags(elements, 'title')[0]?.text).toBe('The day');
    expect(tags(elements, 'desc')[0]?.text).toBe('M inside its target');
  });

  it('draws a day on which every part took no time at all', () => {
    const zero = line({ mean: 0, spread: null, target: null });
    for (const element of draw([zero]))
      expect(Object.values(element.attributes).map(String)).not.toContain('NaN');
  });

  it.each([720, 760, 1_128, 1_140])('has no text clipped or on another at a width of %i', (width) => {
    const lines = [
      line({ key: 'a', target: { value: 0.01, text: 'target 0:01' } }),
      line({ key: 'b', label: 'WD-2230V tall, veneered, left', note: 'n 1234' }),
      line({
        key: 'c',
        mean: 1.49,
        target: { value: 1.5, text: 'target 1:30' },
        verdict: '▸ 1234 % slower than target',
      }),
    ];
    const elements = draw(lines, width);
    const boxes = textBoxes(elements, { size: 18, anchor: 'start' });
    expect(collisions(boxes)).toEqual([]);
    expect(clipped(boxes, width, at(tags(elements, 'svg')[0], 'height'))).toEqual([]);
  });
});
