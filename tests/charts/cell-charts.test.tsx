import { describe, expect, it } from 'vitest';
import { ActivityColumns } from '../../src/charts/activity-columns';
import { BalanceBars } from '../../src/charts/balance-bars';
import { Histogram } from '../../src/charts/histogram';
import { at, drawn, tags } from './drawn';

const text = (value: number) => value.toFixed(1);
const frame = { id: 'c', title: 'Title', description: 'What it says' };

describe('ActivityColumns', () => {
  const activities = [
    { name: 'Load', state: 'working', from: 0, to: 0.5 },
    { name: 'Watch', state: 'attending', from: 0.5, to: 1 },
    { name: '', state: 'waiting', from: 1, to: 2 },
  ] as const;
  // 232 − 26 − 6 = 200 px for 2 minutes: 100 px a minute, from 26.
  const elements = drawn(
    <ActivityColumns
      {...frame}
      width={246}
      height={232}
      end={2}
      scaleEnd={2}
      columns={[
        { title: 'Operator', activities },
        { title: 'Machine', activities: [] },
      ]}
      tickText={text}
    />,
  );
  const bars = tags(elements, 'rect').filter((bar) => at(bar, 'x') === 46);

  it('lets time run down to scale', () => {
    expect(bars.map((bar) => [at(bar, 'y'), at(bar, 'height')])).toEqual([
      [26, 50],
      [76, 50],
      [126, 100],
    ]);
  });

  it('tells work, attention and waiting apart without colour: filled, hatched, blank and dashed', () => {
    expect(bars.map(({ attributes }) => attributes.fill)).toEqual([
      'var(--quiet)',
      'url(#c-diagonal)',
      'var(--sheet)',
    ]);
    expect(bars.map(({ attributes }) => attributes['stroke-dasharray'])).toEqual([
      undefined,
      undefined,
      '4 4',
    ]);
  });

  it('draws nothing of a cycle of no time', () => {
    const none = drawn(
      <ActivityColumns
        {...frame}
        width={200}
        height={200}
        end={0}
        scaleEnd={0}
        columns={[]}
        tickText={text}
      />,
    );
    expect(none).toEqual([]);
  });
});

describe('Histogram', () => {
  const elements = drawn(
    <Histogram
      {...frame}
      width={228}
      height={162}
      edges={[0, 10, 20]}
      counts={[1, 4]}
      marks={[
        { at: 15, text: 'half' },
        { at: 99, text: 'far out' },
      ]}
      tickText={(value) => String(value)}
    />,
  );

  it('draws a bar for every count, to scale', () => {
    // 162 − 22 − 40 = 100 px for 4; 200 px for 20, from 14, with half a pixel of air on either side.
    const bars = tags(elements, 'rect');
    expect(bars.map((bar) => [at(bar, 'x'), at(bar, 'width'), at(bar, 'height')])).toEqual([
      [14.5, 99, 25],
      [114.5, 99, 100],
    ]);
  });

  it('writes its edges with the decimals that their step needs: 2.5 and 7.5 are not 3 and 8', () => {
    const written = drawn(
      <Histogram
        {...frame}
        width={800}
        height={162}
        edges={[0, 2.5, 5, 7.5]}
        counts={[1, 2, 3]}
        marks={[]}
        tickText={(value, digits) => value.toFixed(digits)}
      />,
    );
    expect(tags(written, 'text').map((element) => element.text)).toEqual(['0.0', '2.5', '5.0', '7.5']);
  });

  it('marks values that lie in it, with words', () => {
    const marks = tags(elements, 'text').map((element) => element.text);
    expect(marks).toContain('half');
    expect(marks).not.toContain('far out');
  });
});

describe('BalanceBars', () => {
  const elements = drawn(
    <BalanceBars
      {...frame}
      width={446}
      height={250}
      bars={[
        {
          title: 'person 1',
          pieces: [
            { name: 'a', amount: 1 },
            { name: 'b', amount: 0.5 },
          ],
          p80: 1.6,
        },
        {
          title: 'machine',
          pieces: [
            { name: 'a', amount: 0.25 },
            { name: 'm', amount: 1, isMachine: true },
          ],
          p80: null,
        },
      ]}
      takt={{ at: 1.8, text: 'takt 1.8' }}
      p80Text="8 of 10"
      tickText={text}
    />,
  );
  const bars = tags(elements, 'rect').filter((bar) => at(bar, 'width') === 184);

  it('stacks the elements of a person to scale, from the foot up', () => {
    // 250 − 26 − 24 = 200 px for 2 minutes.
    expect(bars.slice(0, 2).map((bar) => [at(bar, 'y'), at(bar, 'height')])).toEqual([
      [126, 100],
      [76, 50],
    ]);
  });

  it('hatches the machine, but not who loads it, and ticks where eight of ten end', () => {
    expect(bars[3]!.attributes.fill).toBe('url(#c-diagonal)');
    expect(bars[2]!.attributes.fill).toBe('var(--sheet)');
    expect(tags(elements, 'text').filter((element) => element.text === '8 of 10')).toHaveLength(1);
  });

  it('draws the takt across all of them', () => {
    const takt = tags(elements, 'line').find((line) => line.attributes['stroke-dasharray'] === '9 6')!;
    expect(at(takt, 'y1')).toBeCloseTo(226 - 180, 6);
    expect(at(takt, 'x2')).toBe(446);
  });
});
