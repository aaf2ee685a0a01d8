import { render } from 'preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Bench } from '../../src/application/bench';
import { endElement } from '../../src/application/study/end-element';
import { noteInHand } from '../../src/application/study/note-in-hand';
import { foldStudy } from '../../src/domain/study/fold-study';
import { type App, AppContext } from '../../src/screens/app';
import { ObserveActions } from '../../src/screens/study/observe-actions';
import { useRating } from '../../src/screens/study/use-rating';
import { element, everything, openStudy, studyOf } from '../domain/study/study-at-the-bench';
import type { FakeClock } from '../support/fake-clock';

const moment = () => new Promise((resolve) => setTimeout(resolve));

describe('a tap on a study, in the milliseconds in which the tap before it is not drawn yet,', () => {
  const box = document.createElement('div');
  let at: Awaited<ReturnType<typeof openStudy>>;
  const draw = async (what: preact.ComponentChild) => {
    const app = { bench: at.bench, isReadOnly: false } as unknown as App;
    render(<AppContext.Provider value={app}>{what}</AppContext.Provider>, box);
    await moment();
  };
  const press = async (name: string) => {
    const button = [...box.querySelectorAll('button')].find(({ textContent }) =>
      textContent?.startsWith(name),
    )!;
    button.click();
    await moment();
  };
  const readings = async () => foldStudy(await everything(at.log)).readings.map(({ row }) => row);

  beforeEach(async () => {
    document.body.append(box);
    at = await openStudy({ elements: [element('Load'), element('Clean')] });
    at.clock.pass(2_000);
  });
  afterEach(() => {
    render(null, box);
    box.remove();
  });

  it('puts its remark on what is in hand by then, without the remark of the element before', async () => {
    noteInHand(at.bench, 'loose clamp');
    await draw(<ObserveActions watch={studyOf(at.bench).watch} isSnapback={false} onRemark={() => {}} />);
    tapBreakPoint(at.bench, at.clock);
    await press('Fumble');
    tapBreakPoint(at.bench, at.clock);
    expect((await readings()).map(({ carried }) => carried.note)).toEqual(['loose clamp', 'fumble']);
  });

  it('takes the rating for judged of one element only', async () => {
    let endInHand = () => {};
    let rate: (pct: number) => void = () => {};
    const drawn = studyOf(at.bench);
    function Rated() {
      const rating = useRating(drawn);
      rate = rating.rate;
      endInHand = () => endElement(at.bench, at.clock.now(), rating.standing, rating.isOwnNow());
      return null;
    }
    await draw(<Rated />);
    rate(110);
    await moment();
    for (let bounce = 0; bounce < 2; bounce += 1) {
      endInHand();
      at.clock.pass(2_000);
    }
    const facts = (await everything(at.log)).map(({ fact }) => fact);
    expect(facts.flatMap((fact) => (fact.kind === 'element-ended' ? [fact.judged] : []))).toEqual([
      true,
      false,
    ]);
  });
});

function tapBreakPoint(bench: Bench, clock: FakeClock): void {
  endElement(bench, clock.now(), 100);
  clock.monoMs += 2_000;
  clock.wallMs += 2_000;
}
