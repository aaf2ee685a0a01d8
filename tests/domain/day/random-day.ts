import fc from 'fast-check';
import type { TurnToSummarise } from '../../../src/domain/day/summarise-day';
import type { TurnFact } from '../../../src/domain/records/turn-fact';
import { done, partM, partV, turnOf } from './turn-of-day';

const step = fc.oneof(
  { weight: 6, arbitrary: fc.constant('part' as const) },
  { weight: 1, arbitrary: fc.constant('scrap' as const) },
  { weight: 1, arbitrary: fc.constant('rework' as const) },
  { weight: 2, arbitrary: fc.constantFrom('stoppage', 'set-up', 'planned-break', 'called-away') },
);

/** A turn of any parts and stoppages, at any pace, ended or not. */
export function anyTurn(sequence = 1): fc.Arbitrary<TurnToSummarise> {
  return fc
    .record({
      steps: fc.array(fc.tuple(step, fc.integer({ min: 3, max: 400 }), fc.boolean()), { maxLength: 30 }),
      ends: fc.boolean(),
      beginsAtS: fc.integer({ min: 0, max: 20_000 }),
    })
    .map(({ steps, ends, beginsAtS }) => {
      const happened: [number, TurnFact][] = [];
      const key = () => `t:${sequence + happened.length}`;
      let atS = 0;
      for (const [what, lengthS, isV] of steps) {
        atS += lengthS;
        if (what === 'part' || what === 'scrap' || what === 'rework') {
          happened.push([atS, done(isV ? partV : partM)]);
          const partDone = key();
          if (what !== 'part') happened.push([atS, { kind: 'part-judged', partDone, outcome: what }]);
        } else {
          happened.push([atS, { kind: 'stopped' }]);
          const stoppage = key();
          atS += lengthS;
          happened.push([atS, { kind: 'resumed' }]);
          if (isV) {
            happened.push([
              atS,
              { kind: 'stoppage-explained', stoppage, reason: what, label: '', category: what },
            ]);
          }
        }
      }
      if (ends) happened.push([atS + 5, { kind: 'turn-ended' }]);
      return {
        turn: turnOf(happened, { beginsAtS, sequence }),
        absorbedMs: new Map<string, number>(),
        breaks: [],
      };
    });
}
