import { describe, expect, it } from 'vitest';
import { foldTurn } from '../../src/domain/turn/fold-turn';
import { ownPartsTable } from '../../src/exchange/own-parts-table';
import { writeTable } from '../../src/exchange/write-table';
import { change, cycleIs, done, judged, partN, turnRecords } from '../domain/turn/turn-script';

const turn = foldTurn(
  turnRecords([
    [80, done()],
    [170, done()],
    [171, judged(12, 'scrap')],
    [200, { kind: 'person-changed', person: 'M2' }],
    [260, done()],
    [260, change(partN)],
    [330, done(partN)],
  ]),
);

describe('what a person takes along', () => {
  it('is every part that was theirs alone, with its time and the target it had', () => {
    const rows = ownPartsTable([turn], 'K7').rows.map((row) => row.slice(2, 7));
    expect(rows).toEqual([
      ['M', 80, 90, 'good', 1],
      ['M', 90, 90, 'scrap', 1],
    ]);
  });

  it('has nothing of anybody else, and nothing of a part that two shared', () => {
    // M2 finished the third, which K7 began, and made N alone, which has no target.
    expect(ownPartsTable([turn], 'M2').rows.map((row) => row.slice(2, 6))).toEqual([['N', 70, null, 'good']]);
    expect(ownPartsTable([turn], 'R4').rows).toEqual([]);
  });

  it('says of a part of which a stop left no time that it is in no average, and why', () => {
    const stood = foldTurn(
      turnRecords([
        [80, done()],
        [80, { kind: 'stopped' }],
        [200, { kind: 'resumed' }],
        [
          200,
          {
            kind: 'stoppage-explained',
            stoppage: 't:12',
            reason: 'material',
            label: '',
            category: 'stoppage',
          },
        ],
        [201, done()],
      ]),
    );
    expect(ownPartsTable([stood], 'K7').rows.map((row) => row.slice(3, 8))).toEqual([
      [80, 90, 'good', 1, ''],
      [1, 90, 'good', 0, 'no-time-left'],
    ]);
  });

  it('says of a part with a stop in it that it is in no average, and why', () => {
    const said = foldTurn(
      turnRecords([
        [80, done()],
        [81, cycleIs(11, 'interrupted')],
      ]),
    );
    expect(ownPartsTable([said], 'K7').rows.map((row) => row.slice(3, 8))).toEqual([
      [80, 90, 'good', 0, 'interrupted'],
    ]);
  });

  it('says in its heading what it is not for', () => {
    expect(writeTable(ownPartsTable([turn], 'K7')).split('\r\n')[0]).toMatch(/not_for_pay/);
  });
});
