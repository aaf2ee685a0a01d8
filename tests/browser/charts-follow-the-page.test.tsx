import '../../src/screens/shell/base.css';
import '../../src/screens/review/review.css';
import { render } from 'preact';
import { afterEach, describe, expect, it } from 'vitest';
import { reviewDay } from '../../src/domain/day/review-day';
import { daysRun } from '../../src/domain/weeks/days-run';
import { DayLedger } from '../../src/screens/review/day-ledger';
import { DayPicture } from '../../src/screens/review/day-picture';
import { RunOfDays } from '../../src/screens/review/weeks/run-of-days';
import { done, turnOf } from '../domain/day/turn-of-day';

const day = reviewDay('2026-03-02', [
  turnOf([
    [80, done()],
    [170, done()],
    [180, { kind: 'stopped' }],
    [240, { kind: 'resumed' }],
    [300, { kind: 'turn-ended' }],
  ]),
]);
const values = [{ day: '2026-03-02', value: 1.5, count: 2, isFew: true, isPartDay: false, target: null }];
const box = document.createElement('div');
document.body.append(box);
afterEach(() => render(null, box));

const widths = () => [...box.querySelectorAll('svg[role="img"]')].map(({ clientWidth }) => clientWidth);

async function widthsAt(pagePx: number): Promise<number[]> {
  box.style.width = `${pagePx}px`;
  await expect.poll(() => Math.max(...widths())).toBeLessThanOrEqual(pagePx);
  // A drawing that reacts to its own width would still be moving.
  await new Promise((resolve) => setTimeout(resolve, 200));
  return widths();
}

describe('the charts of Review', () => {
  it('are as wide as the page before and after the tablet is turned, in either direction', async () => {
    box.style.width = '1100px';
    render(
      <div class="stack review">
        <DayPicture day={day} />
        <section class="stack">
          <DayLedger day={day} attended={null} open={() => {}} />
        </section>
        <section class="stack">
          <RunOfDays
            figure="per-good"
            name="M"
            values={values}
            stretches={daysRun(values, [])}
            days={[]}
            changes={[]}
          >
            {null}
          </RunOfDays>
        </section>
      </div>,
      box,
    );
    await expect.poll(() => widths().length).toBe(3);
    expect(await widthsAt(1_100)).toEqual([1_100, 1_100, 1_100]);
    expect(await widthsAt(700)).toEqual([700, 700, 700]);
    expect(await widthsAt(1_000)).toEqual([1_000, 1_000, 1_000]);
  });
});
