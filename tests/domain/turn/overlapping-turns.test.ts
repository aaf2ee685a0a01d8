import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LogRecord } from '../../../src/domain/records/log-record';
import { overlappingTurns } from '../../../src/domain/turn/overlapping-turns';
import { type TurnSpan, turnSpans } from '../../../src/domain/turn/turn-span';
import { recordAt } from '../../support/records';

const MINUTE_MS = 60_000;

const span = (device: string, from: number, to: number, person = 'K7'): TurnSpan => ({
  id: `${device}:${from}`,
  device,
  person,
  fromWallMs: from * MINUTE_MS,
  toWallMs: to * MINUTE_MS,
});
const found = (...spans: TurnSpan[]) =>
  overlappingTurns(spans).map(({ first, second, overlapMs }) => [first.id, second.id, overlapMs / MINUTE_MS]);

describe('overlappingTurns', () => {
  it('finds one person at two tablets at once, and for how long', () => {
    expect(found(span('a', 0, 60), span('b', 50, 120))).toEqual([['a:0', 'b:50', 10]]);
    expect(found(span('b', 50, 120), span('a', 0, 60))).toEqual([['a:0', 'b:50', 10]]);
    expect(found(span('a', 0, 60), span('b', 20, 30))).toEqual([['a:0', 'b:20', 10]]);
  });

  it('leaves two people alone, and one person who went from one tablet to the other', () => {
    expect(found(span('a', 0, 60), span('b', 0, 60, 'M2'))).toEqual([]);
    expect(found(span('a', 0, 60), span('b', 60, 120))).toEqual([]);
  });

  it('leaves out what the clocks of two tablets may differ, a minute', () => {
    expect(found(span('a', 0, 60), span('b', 59, 120))).toEqual([]);
    expect(found(span('a', 0, 60), span('b', 58.9, 120))).toHaveLength(1);
    expect(overlappingTurns([span('a', 0, 60), span('b', 59, 120)], 0)).toHaveLength(1);
  });

  it('leaves turns of one tablet alone, whose clock may have been set', () => {
    expect(found(span('a', 0, 60), span('a', 30, 90))).toEqual([]);
  });

  it('finds every pair of three tablets, in the order of time', () => {
    expect(found(span('c', 20, 90), span('a', 0, 60), span('b', 10, 70))).toEqual([
      ['a:0', 'b:10', 50],
      ['a:0', 'c:20', 40],
      ['b:10', 'c:20', 50],
    ]);
  });

  it('finds what comparing all with all finds', () => {
    const minutes = fc.integer({ min: 0, max: 40 });
    const spans = fc.array(
      fc
        .tuple(fc.constantFrom('a', 'b', 'c'), minutes, minutes, fc.constantFrom('K7', 'M2'))
        .map(([device, from, length, person]) => span(device, from, from + length, person)),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(spans, (all) => {
        let pairs = 0;
        for (const [place, one] of all.entries()) {
          for (const two of all.slice(place + 1)) {
            const common = Math.min(one.toWallMs, two.toWallMs) - Math.max(one.fromWallMs, two.fromWallMs);
            if (one.person === two.person && one.device !== two.device && common > MINUTE_MS) pairs += 1;
          }
        }
        expect(overlappingTurns(all)).toHaveLength(pairs);
      }),
    );
  });
});

describe('turnSpans', () => {
  const started = {
    kind: 'turn-started',
    starts: 'turn',
    person: 'K7',
    part: 'p',
    partCode: 'M',
    targetMs: null,
  } as const;
  const done = { kind: 'part-done', part: 'p', partCode: 'M', targetMs: null } as const;
  const start = recordAt(4, 0, 't:4', started);
  const { wallMs } = start.stamp;

  it('is from the start to the end, whatever is said about the turn later', () => {
    const end = recordAt(6, 90_000, 't:4', { kind: 'turn-ended' });
    const judged = recordAt(7, 500_000, 't:4', { kind: 'part-judged', partDone: 't:5', outcome: 'scrap' });
    expect(turnSpans([start, recordAt(5, 60_000, 't:4', done), end, judged])).toEqual([
      { id: 't:4', device: 't', person: 'K7', fromWallMs: wallMs, toWallMs: wallMs + 90_000 },
    ]);
  });

  it('goes up to the last record while the turn has not ended', () => {
    expect(turnSpans([start, recordAt(5, 60_000, 't:4', done)])[0]?.toWallMs).toBe(wallMs + 60_000);
  });

  it('is never of negative length: a clock was set back', () => {
    expect(turnSpans([start, recordAt(5, -60_000, 't:4', done)])[0]?.toWallMs).toBe(wallMs);
  });

  it('is none where no turn begins', () => {
    expect(turnSpans([recordAt(5, 0, 't:4', done)])).toEqual([]);
  });

  it('are one for each person who was there, as corrected', () => {
    const change = recordAt(5, 60_000, 't:4', { kind: 'person-changed', person: 'M2' });
    const end = recordAt(6, 90_000, 't:4', { kind: 'turn-ended' });
    const spansOf = (...records: LogRecord[]) =>
      turnSpans([start, ...records]).map(({ person, fromWallMs, toWallMs }) => [
        person,
        (fromWallMs - wallMs) / 1_000,
        (toWallMs - wallMs) / 1_000,
      ]);
    expect(spansOf(change, end)).toEqual([
      ['K7', 0, 60],
      ['M2', 60, 90],
    ]);
    const correction = {
      kind: 'person-corrected',
      person: 'R4',
      fromMs: 20_000,
      by: 'F1',
      why: 'told',
    } as const;
    expect(spansOf(change, end, recordAt(7, 500_000, 't:4', correction))).toEqual([
      ['K7', 0, 20],
      ['R4', 20, 90],
    ]);
  });
});
