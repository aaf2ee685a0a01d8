import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { addPerson } from '../../../src/application/shop/add-person';
import { definePart } from '../../../src/application/shop/define-part';
import { describePart } from '../../../src/application/shop/describe-part';
import { removePerson } from '../../../src/application/shop/remove-person';
import { retirePart } from '../../../src/application/shop/retire-part';
import { reviseMethod } from '../../../src/application/shop/revise-method';
import { setReasons } from '../../../src/application/shop/set-reasons';
import { setTarget } from '../../../src/application/shop/set-target';
import type { StopReason } from '../../../src/domain/records/shop-fact';
import type { ElementDefinition } from '../../../src/domain/shop/element-definition';
import { firstReasons } from '../../../src/domain/shop/shop';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

let bench: Bench;
let part: string;

beforeEach(async () => {
  bench = await Bench.open(new InMemoryRecordLog('t'), new FakeClock());
  part = definePart(bench, 'M', 'Medium door');
});

const element: ElementDefinition = {
  name: 'Load',
  breakPoint: 'clamp clicks',
  elementClass: 'repetitive',
  work: 'manual',
  placement: 'external',
  unitsPerOccurrence: 1,
};

/** The sentence of the refusal, once it is seen that nothing was recorded. */
function refused(act: () => void): string {
  const before = bench.changes.value;
  try {
    act();
  } catch (error) {
    expect(error).toBeInstanceOf(RangeError);
    expect(bench.changes.value).toBe(before);
    return (error as RangeError).message;
  }
  return 'not refused';
}

describe('setTarget', () => {
  it.each([0, -60_000, 999, 86_400_001, Number.NaN, Number.POSITIVE_INFINITY])(
    'takes nothing of %s ms',
    (ms) => {
      expect(refused(() => setTarget(bench, part, ms))).toBe(
        'setTarget requires a time from a second to a day',
      );
      expect(bench.shop.value.parts[0]!.targetMs).toBeNull();
    },
  );

  it('takes a second, a day, and nothing at all', () => {
    for (const ms of [1_000, 86_400_000, null]) {
      setTarget(bench, part, ms);
      expect(bench.shop.value.parts[0]!.targetMs).toBe(ms);
    }
  });

  it('keeps the study that a standard comes from, and whole milliseconds', () => {
    setTarget(bench, part, 90_804.4, { source: 'standard', study: 't:40' });
    expect(bench.shop.value.parts[0]).toMatchObject({
      targetMs: 90_804,
      targetSource: 'standard',
      targetStudy: 't:40',
    });
  });

  it('refuses a part that the shop does not have', () => {
    expect(refused(() => setTarget(bench, 'x:1', 90_000))).toBe('setTarget requires a part of the shop');
  });
});

describe('the code of a part', () => {
  it('is not empty and not taken by another part in use', () => {
    expect(refused(() => definePart(bench, '  ', ''))).toMatch(/^definePart requires a code/);
    expect(refused(() => definePart(bench, ' m ', ''))).toMatch(/^definePart requires a code/);
    const other = definePart(bench, 'V', '');
    expect(refused(() => describePart(bench, other, 'M', ''))).toMatch(/^describePart requires a code/);
    expect(refused(() => describePart(bench, 'x:1', 'Q', ''))).toBe(
      'describePart requires a part of the shop',
    );
    describePart(bench, part, 'M', 'Door');
    expect(bench.shop.value.parts.map(({ code, name }) => [code, name])).toEqual([
      ['M', 'Door'],
      ['V', ''],
    ]);
  });

  it('may be used again once the part is retired, and then keeps the retired one out', () => {
    retirePart(bench, part, true);
    definePart(bench, 'M', 'A new medium door');
    expect(refused(() => retirePart(bench, part, false))).toBe(
      'retirePart requires, to bring a part back, a code that no part in use has',
    );
    expect(refused(() => retirePart(bench, 'x:1', true))).toBe('retirePart requires a part of the shop');
  });
});

describe('people', () => {
  it('have codes, each on the list once', () => {
    expect(refused(() => addPerson(bench, ' '))).toBe('addPerson requires a code');
    addPerson(bench, ' K7 ');
    const before = bench.changes.value;
    addPerson(bench, 'k7');
    removePerson(bench, 'nobody');
    expect(bench.changes.value).toBe(before);
    expect(bench.shop.value.people).toEqual(['K7']);
    removePerson(bench, 'K7');
    expect(bench.shop.value.people).toEqual([]);
  });
});

describe('setReasons', () => {
  const reason = (id: string, label: string): StopReason => ({ id, label, category: 'stoppage' });

  it('takes one to six', () => {
    expect(refused(() => setReasons(bench, []))).toBe('setReasons requires one to six reasons');
    const seven = [...firstReasons, reason('own', 'Dust')];
    expect(refused(() => setReasons(bench, seven))).toBe('setReasons requires one to six reasons');
  });

  it('takes no id twice, none empty, and not the one of time that nobody explained', () => {
    const message = 'setReasons requires an id of its own for every reason';
    expect(refused(() => setReasons(bench, [reason('a', 'x'), reason('a', 'y')]))).toBe(message);
    expect(refused(() => setReasons(bench, [reason('', 'x')]))).toBe(message);
    expect(refused(() => setReasons(bench, [reason('not-stated', 'x')]))).toBe(message);
  });

  it('wants words for a reason of the shop’s own, and none for those that the tablet words', () => {
    expect(refused(() => setReasons(bench, [reason('own', ' ')]))).toBe(
      'setReasons requires words for every reason',
    );
    setReasons(bench, [reason('machine', ''), reason('own', ' Dust ')]);
    expect(bench.shop.value.reasons.map(({ label }) => label)).toEqual(['', 'Dust']);
  });
});

describe('reviseMethod', () => {
  it.each([
    ['no element', []],
    ['an element without a name', [{ ...element, name: ' ' }]],
    ['two elements of one name', [element, element]],
  ])('refuses %s', (_, elements) => {
    expect(refused(() => reviseMethod(bench, part, elements))).toBe(
      'reviseMethod requires at least one element, each with a name of its own',
    );
  });

  it.each([0, -1, 1.5, Number.NaN])(
    'refuses %s parts per cycle, and as many work units per occurrence',
    (count) => {
      expect(refused(() => reviseMethod(bench, part, [element], { partsPerCycle: count }))).toBe(
        'reviseMethod requires a whole number of parts per cycle, 1 or more',
      );
      expect(refused(() => reviseMethod(bench, part, [{ ...element, unitsPerOccurrence: count }]))).toBe(
        'reviseMethod requires whole work units per occurrence, 1 or more',
      );
    },
  );

  it('refuses a part that the shop does not have', () => {
    expect(refused(() => reviseMethod(bench, 'x:1', [element]))).toBe(
      'reviseMethod requires a part of the shop',
    );
  });
});
