import { describe, expect, it } from 'vitest';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { foldTurn } from '../../../src/domain/turn/fold-turn';
import { ledgerTotals } from '../../../src/domain/turn/ledger-totals';
import type { Turn } from '../../../src/domain/turn/turn';
import { stampAt } from '../../support/records';
import {
  change,
  done,
  explained,
  judged,
  type Line,
  partL,
  partM,
  resumed,
  stopped,
  turnRecords,
  undone,
} from './turn-script';

/** Five parts of M in 80 s each, to know what is usual: they end at 400 s with record t:15. */
const usual: Line[] = [80, 160, 240, 320, 400].map((at): Line => [at, done()]);
const slept = (ms: number): TurnFact => ({ kind: 'slept', sleptMs: ms });
const asleep = (awakeS: number, sleptS: number) =>
  stampAt(awakeS * 1_000, { wallMs: stampAt((awakeS + sleptS) * 1_000).wallMs });
const reloaded = (atS: number, monoMs: number) => stampAt(atS * 1_000, { run: 'run-2', monoMs });

interface Fault {
  readonly name: string;
  readonly lines: Line[];
  /** Parts done, and of these the parts in the mean, before anybody answers anything. */
  readonly done: number;
  readonly counted: number;
  readonly elapsedS: number;
  readonly doubts: readonly string[];
}

const faults: Fault[] = [
  { name: 'a missed tap', lines: [[560, done()]], done: 6, counted: 5, elapsedS: 560, doubts: ['two-parts'] },
  {
    name: 'a bounce',
    lines: [
      [480, done()],
      [480.2, done()],
    ],
    done: 6,
    counted: 6,
    elapsedS: 480.2,
    doubts: ['second-tap'],
  },
  {
    name: 'an unsure second tap',
    lines: [
      [480, done()],
      [490, done()],
    ],
    done: 6,
    counted: 6,
    elapsedS: 490,
    doubts: ['second-tap'],
  },
  {
    name: 'a tap taken back',
    lines: [
      [430, done()],
      [432, undone(16)],
      [480, done()],
    ],
    done: 6,
    counted: 6,
    elapsedS: 480,
    doubts: [],
  },
  {
    name: 'a wrong part after an order change',
    lines: [[400, change(partL)], ...[490, 580, 670, 760, 850].map((at): Line => [at, done(partL)])],
    done: 10,
    counted: 5,
    elapsedS: 850,
    doubts: ['another-part'],
  },
  {
    name: 'a tablet asleep in mid-cycle',
    lines: [
      [0, slept(120_000), asleep(430, 120)],
      [0, done(), asleep(480, 120)],
    ],
    done: 6,
    counted: 5,
    elapsedS: 600,
    doubts: ['gap'],
  },
  {
    name: 'nobody there for a quarter of an hour',
    lines: [
      [0, slept(900_000), asleep(430, 900)],
      [0, done(), asleep(480, 900)],
    ],
    done: 6,
    counted: 5,
    elapsedS: 1_380,
    doubts: ['gap', 'same-person'],
  },
  {
    name: 'a page that was gone',
    lines: [
      [0, { kind: 'page-opened' }, reloaded(450, 100)],
      [0, done(), reloaded(490, 40_100)],
    ],
    done: 6,
    counted: 5,
    elapsedS: 490,
    doubts: ['gap'],
  },
  {
    name: 'a clock set back by an hour',
    lines: [
      [430, { kind: 'clock-set', byMs: -3_600_000 }],
      [480, done()],
    ],
    done: 6,
    counted: 6,
    elapsedS: 480,
    doubts: [],
  },
  {
    name: 'called away',
    lines: [
      [430, stopped],
      [730, resumed],
      [731, explained(16, 'called-away', 'called-away')],
      [780, done()],
    ],
    done: 6,
    counted: 6,
    elapsedS: 780,
    doubts: [],
  },
  {
    name: 'a part tapped during a stoppage',
    lines: [
      [450, stopped],
      [500, done()],
    ],
    done: 6,
    counted: 6,
    elapsedS: 500,
    doubts: [],
  },
  {
    name: 'a scrapped part',
    lines: [
      [480, done()],
      [482, judged(16, 'scrap')],
    ],
    done: 6,
    counted: 6,
    elapsedS: 482,
    doubts: [],
  },
];

const meanOfM = ({ cycles }: Turn) => {
  const own = cycles.filter(({ part, isCounted }) => part === partM.part && isCounted);
  return own.reduce((sum, { netMs }) => sum + netMs, 0) / own.length;
};

describe(`${faults.length} faults at the bench, before anybody answers`, () => {
  for (const { name, lines, done: parts, counted, elapsedS, doubts } of faults) {
    it(`${name}: ${parts} done, ${counted} counted, every millisecond somewhere`, () => {
      const turn = foldTurn(turnRecords([...usual, ...lines]));
      expect(turn.cycles).toHaveLength(parts);
      expect(turn.cycles.filter(({ isCounted }) => isCounted)).toHaveLength(counted);
      expect(turn.doubts.map(({ kind }) => kind)).toEqual(doubts);
      const total = Object.values(ledgerTotals(turn.ledger)).reduce((sum, ms) => sum + ms, 0);
      expect(total).toBe(elapsedS * 1_000);
      expect(turn.lastAtMs).toBe(elapsedS * 1_000);
      // Five parts in 80 s, and a sixth that took 80 s of work, or 50 s where the stoppage began at 450 s.
      expect(meanOfM(turn)).toBeCloseTo(name.includes('during') ? (400_000 + 50_000) / 6 : 80_000, 6);
    });
  }
});

describe('a tap of which somebody says that it was no part', () => {
  const none: TurnFact = { kind: 'tap-left-out', tap: 't:15', by: 'K7' };

  it('is no part any more, and its time is the next part’s', () => {
    const turn = foldTurn(turnRecords([...usual, [430, done()], [430, none]]));
    expect(turn.cycles.map(({ netMs }) => netMs)).toEqual([80_000, 80_000, 80_000, 80_000, 110_000]);
    expect(turn.doubts).toEqual([]);
    expect(Object.values(ledgerTotals(turn.ledger)).reduce((sum, ms) => sum + ms, 0)).toBe(430_000);
  });

  it('as the newest one leaves the part in hand going on from the tap before it', () => {
    const turn = foldTurn(turnRecords([...usual, [400, none]]));
    expect(turn.cycles).toHaveLength(4);
    expect(turn.partBeganAtMs).toBe(320_000);
  });

  it('is a part again when that is said', () => {
    const turn = foldTurn(turnRecords([...usual, [400, none], [400, { kind: 'tap-counted', tap: 't:15' }]]));
    expect(turn.cycles).toHaveLength(5);
  });
});
