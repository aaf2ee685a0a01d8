import { describe, expect, it } from 'vitest';
import { correctionHistory } from '../../../src/domain/turn/correction-history';
import { stampAt } from '../../support/records';
import {
  cycleIs,
  done,
  ended,
  gapIs,
  type Line,
  partL,
  partM,
  resumed,
  stopped,
  turnRecords,
  undone,
} from './turn-script';

const asleep = (awakeS: number, sleptS: number) =>
  stampAt(awakeS * 1_000, { wallMs: stampAt((awakeS + sleptS) * 1_000).wallMs });

const lines: Line[] = [
  [0, { kind: 'slept', sleptMs: 60_000 }, asleep(30, 60)],
  [0, done(), asleep(80, 60)],
  [0, done(), asleep(160, 60)],
  [0, ended, asleep(180, 60)],
];

describe('correctionHistory', () => {
  it('says of each correction who, when, why, and what stood before and after it', () => {
    const history = correctionHistory(
      turnRecords([
        ...lines,
        [900, { kind: 'part-recoded', partDone: ['t:12', 't:13'], ...partL, by: 'F1', why: 'wrong part' }],
        [960, { kind: 'person-corrected', person: 'M2', by: 'E2', why: 'told' }],
      ]),
    );
    expect(history).toMatchObject([
      {
        kind: 'part-recoded',
        by: 'F1',
        why: 'wrong part',
        at: stampAt(900_000),
        before: { what: 'parts', parts: [partM] },
        after: { what: 'parts', parts: [partL] },
      },
      {
        by: 'E2',
        before: { what: 'person', person: 'K7' },
        after: { what: 'person', person: 'M2' },
      },
    ]);
  });

  it('shows answers too, with the time they moved and the parts they counted', () => {
    const [gap, judged] = correctionHistory(
      turnRecords([...lines, [900, gapIs(11, 'work')], [960, cycleIs(13, 'two-parts')]]),
    );
    // The 60 s asleep from 30 s on: unaccounted before, cycle after.
    expect(gap).toMatchObject({
      by: '',
      before: { spans: [{ category: 'unaccounted', fromMs: 30_000, toMs: 90_000 }] },
      after: { spans: [{ category: 'cycle', fromMs: 30_000, toMs: 90_000 }] },
    });
    expect(judged).toMatchObject({ before: { done: 2, counted: 2 }, after: { done: 3, counted: 3 } });
  });

  it('says which part and when, what a confirmed part is, and a count that was written down beside the taps', () => {
    const history = correctionHistory(
      turnRecords([
        ...lines,
        [900, { kind: 'part-confirmed', partDone: 't:12', by: 'F1' }],
        [960, { kind: 'parts-counted', count: 131, by: 'F1' }],
      ]),
    );
    expect(history).toMatchObject([
      { about: asleep(80, 60), before: { parts: [partM] }, after: { parts: [partM] } },
      { about: null, by: 'F1', before: { parts: null }, after: { what: 'by-hand', parts: 131 } },
    ]);
  });

  it('says how many parts were changed, and of which moment a turn without a tap is', () => {
    const recoded: Line[] = [
      [900, { kind: 'part-recoded', partDone: ['t:12', 't:13'], ...partL, by: 'F1', why: 'wrong part' }],
    ];
    const [change] = correctionHistory(turnRecords([...lines, ...recoded]));
    expect(change).toMatchObject({ before: { parts: [{ count: 2 }] }, after: { parts: [{ count: 2 }] } });
  });

  it('names what a stop was said to be afterwards, and keeps it when that is taken back, with who did', () => {
    const why = { reason: 'machine', label: '', category: 'stoppage' } as const;
    const history = correctionHistory(
      turnRecords([
        [80, done()],
        [100, stopped],
        [113, resumed],
        [160, done()],
        [180, ended],
        [900, { kind: 'stoppage-explained', stoppage: 't:12', ...why, by: 'F1' }],
        [960, { kind: 'undone', of: 't:16', by: 'F2' }],
      ]),
    );
    const reasons = history.map(({ kind, by, before, after, isStanding }) => [
      kind,
      by,
      ...[before, after].map((state) => state.what === 'time' && state.spans.map(({ reason }) => reason)),
      isStanding,
    ]);
    expect(reasons).toEqual([
      ['stoppage-explained', 'F1', ['not-stated'], ['machine'], false],
      ['undone', 'F2', ['machine'], ['not-stated'], false],
    ]);
    expect(history.map(({ about }) => about)).toEqual([stampAt(100_000), stampAt(100_000)]);
  });

  it('leaves out what was taken back, and is empty where nothing was put right', () => {
    expect(correctionHistory(turnRecords(lines))).toEqual([]);
    expect(correctionHistory(turnRecords([...lines, [900, gapIs(11, 'work')], [910, undone(15)]]))).toEqual(
      [],
    );
  });
});
