import { describe, expect, it } from 'vitest';
import { CombinationChart, type CombinationLine } from '../../src/charts/combination-chart';
import { CycleRun } from '../../src/charts/cycle-run';
import { SizeChart } from '../../src/charts/size-chart';
import { at, drawn, tags } from './drawn';

describe('CombinationChart', () => {
  const line = (change: Partial<CombinationLine>): CombinationLine => ({
    number: '1',
    name: 'Load',
    times: ['2.0', '', ''],
    bars: [],
    ...change,
  });
  const draw = (lines: readonly CombinationLine[], takt: { value: number; text: string } | null = null) =>
    drawn(
      <CombinationChart
        id="c"
        title="Combination"
        description="One cycle"
        width={1_080}
        lines={lines}
        cycle={10}
        cycleText="cycle 10"
        takt={takt}
        heads={['No.', 'Step', 'Manual', 'Auto', 'Walk']}
        totals={['Together', '2', '5', '1']}
        tickText={String}
      />,
    );
  // The plot reaches from 34 + 240 + 3 · 64 + 30 = 496 to 1080 − 24 = 1056: 56 px a unit of ten.
  const x = (time: number) => 496 + time * 56;

  it('draws manual work solid and the machine’s run dashed, from where it begins to where it ends', () => {
    const solid = tags(draw([line({ bars: [{ kind: 'manual', from: 0, to: 2 }] })]), 'line').find(
      ({ attributes }) => attributes['stroke-width'] === 5,
    )!;
    expect([at(solid, 'x1'), at(solid, 'x2')]).toEqual([x(0), x(2)]);
    expect(solid.attributes['stroke-dasharray']).toBeUndefined();
    const dashed = tags(draw([line({ bars: [{ kind: 'automatic', from: 2, to: 7 }] })]), 'line').find(
      ({ attributes }) => attributes['stroke-width'] === 3,
    )!;
    expect([at(dashed, 'x1'), at(dashed, 'x2')]).toEqual([x(2), x(7)]);
    expect(dashed.attributes['stroke-dasharray']).toBeTruthy();
  });

  it('keeps the head of the last column clear of the first mark of the scale', () => {
    const texts = tags(draw([line({})]), 'text');
    const saying = (words: string) => texts.find(({ text }) => text === words)!;
    // The head ends at its x, and the mark stands in the middle of its own: four characters of half an em each way.
    expect(at(saying('0'), 'x') - at(saying('Walk'), 'x')).toBeGreaterThan(4 * 7);
  });

  it('gives a long name the room it wants, and cuts one that wants more than a third', () => {
    const shown = (name: string) => tags(draw([line({ name })]), 'text').map(({ text }) => text);
    const long = 'Deburr by hand, wipe and turn over';
    expect(shown(long)).toContain(long);
    expect(shown(`${long}, then lay aside`).some((text) => text.endsWith('…'))).toBe(true);
  });

  it('draws walking as waves and waiting with an arrow at both ends', () => {
    const [wave, arrows] = tags(
      draw([
        line({
          bars: [
            { kind: 'walking', from: 1, to: 2 },
            { kind: 'waiting', from: 7, to: 10 },
          ],
        }),
      ]),
      'path',
    ).map(({ attributes }) => String(attributes.d));
    expect(wave).toMatch(new RegExp(`^M${x(1)},\\d+ Q.* ${x(2)},\\d+$`));
    expect(arrows!.match(/L/g)).toHaveLength(4);
  });

  it('draws the cycle’s end and the time wanted as lines across, on one scale', () => {
    const lines = tags(draw([line({})], { value: 20, text: 'target 20' }), 'line');
    const cycle = lines.find(({ attributes }) => attributes['stroke-width'] === '2.5')!;
    const target = lines.find(({ attributes }) => attributes['stroke-dasharray'] === '2 4')!;
    expect(at(target, 'x1')).toBe(1_056);
    expect(at(cycle, 'x1')).toBe((496 + 1_056) / 2);
  });
});

describe('CycleRun', () => {
  const draw = (values: readonly number[]) =>
    drawn(
      <CycleRun
        id="c"
        title="Cycles"
        description="In order"
        width={514}
        values={values}
        centre={2}
        lower={1}
        upper={3}
        ringed={[1]}
        valueText={String}
      />,
    );

  it('puts the cycles in their order and rings the one that is named', () => {
    const circles = tags(draw([1, 3, 2]), 'circle');
    expect(circles.slice(0, 3).map((circle) => [at(circle, 'cx'), at(circle, 'cy')])).toEqual([
      [76, 136],
      [288, 14],
      [500, 75],
    ]);
    expect([at(circles[3], 'cx'), at(circles[3], 'cy'), at(circles[3], 'r')]).toEqual([288, 14, 9]);
  });

  it('draws nothing of a single cycle', () => {
    expect(draw([2])).toEqual([]);
  });
});

describe('SizeChart', () => {
  const draw = (points: readonly { x: number; y: number }[]) =>
    drawn(
      <SizeChart
        id="s"
        title="Sizes"
        description="A line"
        width={630}
        points={points}
        line={[
          { x: 2, y: 2 },
          { x: 4, y: 4 },
        ]}
        xTitle="perimeter, m"
        xText={String}
        yText={String}
      />,
    );

  it('puts readings against size from nothing up, and the line through them', () => {
    // From 70 + 30 = 100 to 630 − 30 = 600; 0 at 252, 4 at 30.
    const elements = draw([
      { x: 2, y: 0 },
      { x: 3, y: 2 },
      { x: 4, y: 4 },
    ]);
    expect(tags(elements, 'circle').map((circle) => [at(circle, 'cx'), at(circle, 'cy')])).toEqual([
      [100, 252],
      [350, 141],
      [600, 30],
    ]);
    expect(tags(elements, 'polyline')[0]!.attributes.points).toBe('100,141 600,30');
  });

  it('draws nothing of one size', () => {
    expect(draw([{ x: 2, y: 1 }])).toEqual([]);
  });
});
