import { describe, expect, it } from 'vitest';
import { inStreamOrder } from '../../../src/domain/records/in-stream-order';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { averageOfPart } from '../../../src/domain/turn/average-of-part';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import { openDoubts } from '../../../src/domain/turn/open-doubts';
import { pace } from '../../../src/domain/turn/pace';
import { recordAt, stampAt } from '../../support/records';
import {
  change,
  counted,
  cycleIs,
  done,
  ended,
  explained,
  gapIs,
  type Line,
  partL,
  partM,
  partN,
  resumed,
  stopped,
  turnRecords,
  undone,
} from './turn-script';

const fold = (lines: readonly Line[], inHand = partM) => foldTurn(turnRecords(lines, inHand));
const kindsOf = (lines: readonly Line[]) => fold(lines).doubts.map(({ kind, key }) => [kind, key]);
const slept = (sleptMs: number): TurnFact => ({ kind: 'slept', sleptMs });

/** The tablet's own clocks: so many seconds awake, and at that moment a sleep of so many has just ended. */
const woken = (awakeS: number, sleptS: number) =>
  stampAt(awakeS * 1_000, { wallMs: stampAt((awakeS + sleptS) * 1_000).wallMs });

/** Seconds 0, 80, 160 … : so many parts of M in 80 s each. */
const steady = (count: number): Line[] =>
  Array.from({ length: count }, (_, place): Line => [80 * (place + 1), done()]);

describe('a part far longer than the usual', () => {
  const five: Line[] = Array.from({ length: 5 }, (_, place): Line => [10 * (place + 1), done()]);
  const timesOf = (lines: readonly Line[]) =>
    fold(lines).cycles.map(({ netMs, isCounted }) => [netMs, isCounted]);

  it('is asked about as a stop that was forgotten, from three times the median on, and is in no mean until then', () => {
    const turn = fold([...five, [106, done()], [114, done()]]);
    expect(turn.doubts).toMatchObject([
      { kind: 'long-part', key: 't:16', fromMs: 50_000, toMs: 106_000, suggestion: { usualMs: 10_000 } },
    ]);
    expect(averageOfPart(turn, partM.part)).toMatchObject({ n: 6, done: 7 });
    expect(pace(turn, turn.lastStamp).aheadMs).toBe(6 * 90_000 - 58_000);
    expect(kindsOf([...five, [80, done()]])).toEqual([]);
    expect(kindsOf([...five, [80.1, done()]])).toEqual([['long-part', 't:16']]);
  });

  it('is a part in no mean when somebody says that a stop was in it, and like any other when it was work', () => {
    const long: Line[] = [...five, [106, done()]];
    expect(timesOf([...long, [110, cycleIs(16, 'interrupted')]]).at(-1)).toEqual([56_000, false]);
    expect(timesOf([...long, [110, cycleIs(16, 'one-part')]]).at(-1)).toEqual([56_000, true]);
    expect(kindsOf([...long, [110, cycleIs(16, 'interrupted')]])).toEqual([]);
  });

  it('is asked about at the beginning too, as soon as the parts after it show what is usual', () => {
    // Like the second part of a turn on a part of 20 s: 81.6 s where five others take 17.
    const early: Line[] = [
      [17, done()],
      [98.6, done()],
      ...[1, 2, 3].map((part): Line => [98.6 + 17 * part, done()]),
    ];
    expect(kindsOf(early)).toEqual([]);
    const turn = fold([...early, [98.6 + 4 * 17, done()]]);
    expect(turn.doubts).toMatchObject([{ kind: 'long-part', key: 't:12', suggestion: { usualMs: 17_000 } }]);
    expect(turn.cycles.map(({ isCounted }) => isCounted)).toEqual([true, false, true, true, true, true]);
    expect(averageOfPart(turn, partM.part)).toMatchObject({ n: 5, done: 6 });
  });

  it('is asked about twice in a row, and then taken for other work that takes as long', () => {
    const lines: Line[] = [...five, [100, done()], [150, done()], [200, done()], [250, done()]];
    expect(timesOf(lines).slice(5)).toEqual([
      [50_000, false],
      [50_000, false],
      [50_000, true],
      [50_000, true],
    ]);
  });

  it('is not asked about for less than a gap of ten seconds, nor where a stop was tapped in it', () => {
    const quick: Line[] = Array.from({ length: 5 }, (_, place): Line => [4 * (place + 1), done()]);
    expect(kindsOf([...quick, [33.9, done()]])).toEqual([]);
    expect(kindsOf([...quick, [34.1, done()]])).toEqual([['long-part', 't:16']]);
    expect(kindsOf([...five, [60, stopped], [90, resumed], [160, done()]])).toEqual([]);
  });
});

describe('a gap', () => {
  const asleep = (sleptS: number, ...more: Line[]): Line[] => [
    [0, slept(sleptS * 1_000), woken(30, sleptS)],
    [0, done(), woken(80, sleptS)],
    ...more,
  ];

  it('is a sleep of ten seconds and more; below it the part’s clock goes on', () => {
    // 80 s awake; 9.999 s asleep are the part's, 10 s are asked about.
    expect(fold(asleep(9.999))).toMatchObject({ doubts: [], cycles: [{ netMs: 89_999, isCounted: true }] });
    expect(fold(asleep(10))).toMatchObject({
      doubts: [{ kind: 'gap', key: 't:11', fromMs: 30_000, toMs: 40_000, suggestion: 'slept' }],
      cycles: [{ netMs: 80_000, isCounted: false, doubt: 'gap' }],
    });
  });

  it('is unaccounted until it is answered, and then work or stopped time with its reason', () => {
    const unanswered = fold(asleep(60));
    expect(ledgerTotals(unanswered.ledger)).toMatchObject({ cycle: 80_000, unaccounted: 60_000 });
    const work = fold(asleep(60, [0, gapIs(11, 'work'), woken(81, 60)]));
    expect(work.cycles).toMatchObject([{ netMs: 140_000, isCounted: true, doubt: null }]);
    const away = { category: 'called-away', reason: 'called-away', label: '' } as const;
    const called = fold(asleep(60, [0, gapIs(11, away), woken(80, 60)]));
    expect(called.cycles).toMatchObject([{ netMs: 80_000, isCounted: true, doubt: null }]);
    expect(ledgerTotals(called.ledger)).toMatchObject({ 'called-away': 60_000, unaccounted: 0 });
    expect([...work.doubts, ...called.doubts]).toEqual([]);
  });

  it('that was the whole of a part leaves it a part done, with no time of its own in any mean or position', () => {
    const away = { category: 'called-away', reason: 'called-away', label: '' } as const;
    // M done at 80 s; asleep from 80 s to 251 s; the next tap is the first thing the tablet sees, at once or 1.4 s after.
    for (const afterS of [0, 1.4]) {
      const turn = fold([
        [80, done()],
        [0, slept(171_000), woken(80, 171)],
        [0, done(), woken(80 + afterS, 171)],
        [0, gapIs(12, away), woken(85, 171)],
      ]);
      expect(turn.cycles).toMatchObject([
        { netMs: 80_000, isCounted: true },
        { netMs: 1_000 * afterS, isCounted: false, doubt: null, outcome: 'good' },
      ]);
      expect(averageOfPart(turn, partM.part)).toEqual({ n: 1, done: 2, meanMs: 80_000 });
      // 90 s earned by the first part, 80 s taken: the second earns nothing from nothing.
      expect(pace(turn, turn.lastStamp).aheadMs).toBe(10_000);
    }
  });

  it('is none while a stoppage lasts: the stoppage goes on', () => {
    const turn = fold([
      [20, stopped],
      [0, slept(600_000), woken(30, 600)],
      [0, resumed, woken(50, 600)],
      [0, done(), woken(90, 600)],
    ]);
    // Stopped from 20 s to 50 + 600 s = 630 s; 20 + 40 s were worked.
    expect(turn.doubts).toEqual([]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({ stoppage: 630_000, cycle: 60_000, unaccounted: 0 });
  });

  it('leaves the clock of the part in hand its whole time, and takes no position from it', () => {
    const turn = fold([[0, slept(600_000), woken(30, 600)]]);
    const now = woken(50, 600);
    // 50 s awake and 600 s asleep; beyond a target of 90 s the sleep alone would be 560 s behind.
    expect(pace(turn, now)).toMatchObject({ partElapsedMs: 650_000, aheadMs: 0 });
  });

  it('is the time in which the page was gone, up to the record with which it came back', () => {
    const back = stampAt(95_000, { run: 'run-2', monoMs: 100 });
    const later = stampAt(125_000, { run: 'run-2', monoMs: 30_100 });
    const turn = fold([
      [30, change(partM)],
      [0, { kind: 'page-opened' }, back],
      [0, done(), later],
    ]);
    // Last seen at 30 s, back at 95 s, done at 125 s: 30 + 30 s are the part's.
    expect(turn.doubts).toMatchObject([
      { kind: 'gap', fromMs: 30_000, toMs: 95_000, suggestion: 'page-gone' },
    ]);
    expect(turn.cycles).toMatchObject([{ netMs: 60_000 }]);
  });

  it('is not the time around what another tablet said afterwards', () => {
    const records = turnRecords([
      [80, done()],
      [160, done()],
      [240, done()],
    ]);
    const said = recordAt(5, 0, 't:10', undone(11), {
      device: 'other',
      stamp: stampAt(100_000, { run: 'elsewhere' }),
    });
    const turn = foldTurn(inStreamOrder('t:10', [...records, said]));
    expect(turn.doubts).toEqual([]);
    expect(turn.lastAtMs).toBe(240_000);
  });

  it('asks who is there only when it was longer than ten minutes, and no more once that is said', () => {
    const gone = (sleptS: number, ...more: Line[]) =>
      fold(asleep(sleptS, ...more)).doubts.map(({ kind }) => kind);
    expect(gone(600)).toEqual(['gap']);
    expect(gone(601)).toEqual(['gap', 'same-person']);
    const same: TurnFact = { kind: 'person-confirmed', gap: 't:11' };
    expect(gone(601, [0, same, woken(80, 601)])).toEqual(['gap']);
    const other: TurnFact = { kind: 'person-corrected', person: 'M2', by: 'F1', why: 'told' };
    expect(fold(asleep(601, [0, other, woken(80, 601)])).person).toBe('M2');
  });
});

describe('a second tap', () => {
  it('makes no part within 15 % of the shortest part of its kind so far, or 1.5 s where that is more', () => {
    // 15 % of 80 s = 12 s, once a part of the kind was timed from tap to tap; before that 1.5 s.
    expect(fold([...steady(2), [171.9, done()]]).cycles).toHaveLength(2);
    expect(fold([...steady(2), [172, done()]]).cycles).toHaveLength(3);
    expect(fold([...steady(1), [81.4, done()]]).cycles).toHaveLength(1);
    expect(fold([...steady(1), [81.5, done()]]).cycles).toHaveLength(2);
    expect(
      fold(
        [
          [80, done(partN)],
          [81.4, done(partN)],
        ],
        partN,
      ).cycles,
    ).toHaveLength(1);
    expect(
      fold(
        [
          [80, done(partN)],
          [81.5, done(partN)],
        ],
        partN,
      ).cycles,
    ).toHaveLength(2);
  });

  it('is no bounce when the page was loaded anew in between; the share of the shortest part holds all the same', () => {
    const reloaded = (ms: number) => stampAt(80_000 + ms, { run: 'run-2', monoMs: 50 });
    expect(
      fold(
        [
          [80, done(partN)],
          [0, done(partN), reloaded(400)],
        ],
        partN,
      ).cycles,
    ).toHaveLength(2);
    const later = stampAt(160_400, { run: 'run-2', monoMs: 50 });
    expect(fold([...steady(2), [0, done(), later]]).cycles).toHaveLength(2);
  });

  it('leaves the time running from the first tap', () => {
    const turn = fold([...steady(1), [81, done()], [165, done()]]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([80_000, 85_000]);
    expect(turn.doubts).toMatchObject([{ kind: 'second-tap', key: 't:12' }]);
  });

  it('is a part when somebody counts it, and asked no more when somebody leaves it out', () => {
    const taps: Line[] = [...steady(1), [81, done()], [165, done()]];
    const isPart = fold([...taps, [170, counted(12)]]);
    expect(isPart.cycles.map(({ netMs }) => netMs)).toEqual([80_000, 1_000, 84_000]);
    const isNone = fold([...taps, [170, { kind: 'tap-left-out', tap: 't:12' }]]);
    expect(isNone).toMatchObject({ doubts: [], cycles: [{}, {}] });
  });

  it('counts 5 s after Go on, when the part had its time before the stoppage, and not 1 s after', () => {
    const stop: Line[] = [
      [70, stopped],
      [100, resumed],
    ];
    expect(fold([...stop, [105, done()]]).cycles.map(({ netMs }) => netMs)).toEqual([75_000]);
    expect(kindsOf([...stop, [101, done()]])).toEqual([['second-tap', 't:13']]);
    // Whoever has said why in between means the next tap.
    expect(kindsOf([...stop, [100.5, explained(11, 'machine', 'stoppage')], [101, done()]])).toEqual([]);
  });

  it('does not become a part because the first one was taken back; a new tap after that is one', () => {
    const bounced = fold([...steady(1), [81, done()], [83, undone(11)]]);
    expect(bounced.cycles).toEqual([]);
    expect(fold([...steady(1), [82, undone(11)], [83, done()]]).cycles.map(({ netMs }) => netMs)).toEqual([
      83_000,
    ]);
  });

  it('is no tap that Undo takes back: that is the one that counts', () => {
    expect(fold([...steady(1), [81, done()]]).undoable).toMatchObject({ key: 't:11', kind: 'part-done' });
  });
});

describe('a missed tap', () => {
  // Five parts in 80 s each; 1.7 × 80 = 136 s and 2.6 × 80 = 208 s.
  const sixth = (seconds: number, ...more: Line[]) => fold([...steady(5), [400 + seconds, done()], ...more]);

  it('is asked about from 1.7 to 2.6 times the median of the last five, and never before five', () => {
    const asked = (seconds: number) => sixth(seconds).doubts.length;
    expect([135.9, 136, 208, 208.1].map(asked)).toEqual([0, 1, 1, 0]);
    expect(fold([...steady(4), [320 + 160, done()]]).doubts).toEqual([]);
  });

  it('is one part, in no mean, until it is answered', () => {
    const { cycles, doubts } = sixth(160);
    expect(cycles).toHaveLength(6);
    expect(cycles.at(-1)).toMatchObject({ netMs: 160_000, isCounted: false, doubt: 'two-parts' });
    expect(doubts).toMatchObject([{ key: 't:16', suggestion: { eachMs: 80_000 } }]);
  });

  it('becomes two parts with half the time each, one part, or an interrupted one', () => {
    const two = sixth(161, [600, cycleIs(16, 'two-parts')]);
    expect(two.cycles.slice(5)).toMatchObject([
      { key: 't:16/1', netMs: 80_500, isCounted: true },
      { key: 't:16', netMs: 80_500, isCounted: true },
    ]);
    expect(sixth(160, [600, cycleIs(16, 'one-part')]).cycles.at(-1)).toMatchObject({ isCounted: true });
    expect(sixth(160, [600, cycleIs(16, 'interrupted')]).cycles.at(-1)).toMatchObject({ isCounted: false });
    expect([...two.doubts, ...sixth(160, [600, cycleIs(16, 'interrupted')]).doubts]).toEqual([]);
  });

  it('is none where a stoppage explains the length, or the length is of another part', () => {
    const broken = fold([...steady(5), [450, stopped], [460, resumed], [570, done()]]);
    expect(broken.doubts).toEqual([]);
    expect(fold([...steady(5), [400, change(partL)], [560, done(partL)]]).doubts).toEqual([]);
  });
});

describe('a wrong part', () => {
  /** Changed to L (150 s), and then so many parts tapped as L in 88 s each: they fit M (90 s). */
  const tappedAsL = (count: number): Line[] => [
    [80, done()],
    [80, change(partL)],
    ...Array.from({ length: count }, (_, place): Line => [80 + 88 * (place + 1), done(partL)]),
  ];

  it('is suggested after five parts whose times fit the target of another, and they are in no mean', () => {
    // 88 ÷ 150 = 0.59 of its own target, 88 ÷ 90 = 0.98 of the other.
    expect(fold(tappedAsL(4)).doubts).toEqual([]);
    const turn = fold(tappedAsL(5));
    expect(turn.doubts).toMatchObject([{ kind: 'another-part', key: 't:13', suggestion: { fits: partM } }]);
    expect(turn.cycles.map(({ isCounted }) => isCounted)).toEqual([true, false, false, false, false, false]);
  });

  it('still says what a part takes as usual: one far longer among them is asked about too', () => {
    // 5 × 88 s end at 520 s. The next part takes 400 s, more than 3 × 88.
    expect(fold([...tappedAsL(5), [920, done(partL)]]).doubts).toMatchObject([
      { kind: 'long-part', key: 't:18', suggestion: { usualMs: 88_000 } },
      { kind: 'another-part', key: 't:13' },
    ]);
  });

  it('is settled by putting the parts under the right one, or by calling the chosen one right', () => {
    const partDone = ['t:13', 't:14', 't:15', 't:16', 't:17'];
    const recoded = fold([
      ...tappedAsL(5),
      [600, { kind: 'part-recoded', partDone, ...partM, by: 'F1', why: 'wrong part chosen' }],
    ]);
    expect(recoded.doubts).toEqual([]);
    expect(recoded.cycles.map(({ partCode, targetMs }) => [partCode, targetMs])).toEqual(
      Array(6).fill(['M', 90_000]),
    );
    const right = fold([...tappedAsL(5), [600, { kind: 'part-confirmed', partDone: 't:13' }]]);
    expect(right.doubts).toEqual([]);
    expect(right.cycles.every(({ isCounted }) => isCounted)).toBe(true);
  });

  it('is none where every other part takes as much longer: then the method is another, and no part is wrong', () => {
    const partS = { part: 't:4', partCode: 'S', targetMs: 37_000 };
    // M in 150 s of 90, and S in 62 s of 37: both 1.67 of their targets, and the time of M is that of L.
    const lines = (otherS: number): Line[] => [
      ...Array.from({ length: 5 }, (_, place): Line => [otherS * (place + 1), done(partS)]),
      [otherS * 5, change(partM)],
      ...Array.from({ length: 5 }, (_, place): Line => [otherS * 5 + 150 * (place + 1), done()]),
    ];
    const kinds = (otherS: number) => openDoubts(fold(lines(otherS), partS), [partL]).map(({ kind }) => kind);
    expect(kinds(62)).toEqual([]);
    expect(kinds(37)).toEqual(['another-part']);
  });

  it('is suggested from the shop’s parts too, without taking anything out of a mean', () => {
    const onlyL = fold(
      Array.from({ length: 5 }, (_, place): Line => [88 * (place + 1), done(partL)]),
      partL,
    );
    expect(onlyL.doubts).toEqual([]);
    expect(openDoubts(onlyL, [partM, partL])).toMatchObject([{ kind: 'another-part' }]);
    expect(onlyL.cycles.every(({ isCounted }) => isCounted)).toBe(true);
  });
});

describe('a correction', () => {
  it('sets a part aside with its cause and takes it back, and it is a part done all the while', () => {
    const aside: TurnFact = { kind: 'part-set-aside', partDone: 't:11', cause: 'drill broke', by: 'F1' };
    const lines: Line[] = [...steady(2), [170, aside]];
    expect(fold(lines).cycles).toMatchObject([
      { isCounted: false, setAside: 'drill broke' },
      { isCounted: true },
    ]);
    const back: TurnFact = { kind: 'part-taken-back', partDone: 't:11', by: 'F1' };
    expect(fold([...lines, [175, back]]).cycles).toMatchObject([{ isCounted: true, setAside: '' }, {}]);
  });

  it('gives each part its own share of a stretch that reaches over several', () => {
    // Stopped by mistake from 60 s to the tap at 80 s; all 160 s are called work, 80 s for each part.
    const turn = fold([
      [60, stopped],
      [80, done()],
      [160, done()],
      [
        200,
        {
          kind: 'time-reclassified',
          fromMs: 0,
          toMs: 160_000,
          category: 'cycle',
          reason: '',
          label: '',
          by: 'F1',
          why: 'stopped by mistake',
        },
      ],
    ]);
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([80_000, 80_000]);
  });

  it('puts a break in mid-cycle where it belongs, and the part keeps the rest', () => {
    // 0 → 680 s with a break from 40 to 640 s that nobody tapped: 680 − 600 = 80 s.
    const turn = fold([
      [680, done()],
      [700, ended],
      [
        900,
        {
          kind: 'time-reclassified',
          fromMs: 40_000,
          toMs: 640_000,
          category: 'planned-break',
          reason: 'break',
          label: '',
          by: 'F1',
          why: 'told by the operator',
        },
      ],
    ]);
    expect(turn.cycles).toMatchObject([{ netMs: 80_000 }]);
    expect(ledgerTotals(turn.ledger)).toMatchObject({
      cycle: 80_000,
      'planned-break': 600_000,
      unaccounted: 20_000,
    });
  });
});
