import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { retirePart } from '../../../src/application/shop/retire-part';
import { setTarget } from '../../../src/application/shop/set-target';
import { newReasonId } from '../../../src/screens/shop/new-reason-id';
import { savePart } from '../../../src/screens/shop/save-part';
import { shownTarget } from '../../../src/screens/shop/shown-target';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { FakeClock } from '../../support/fake-clock';

let bench: Bench;
beforeEach(async () => {
  bench = await Bench.open(new InMemoryRecordLog('t'), new FakeClock());
});
const parts = () => bench.shop.value.parts;

describe('savePart', () => {
  it('takes a new part with its target', () => {
    expect(savePart(bench, null, { code: ' M ', name: ' Door ', target: '1,8' })).toBe('');
    expect(parts()).toMatchObject([{ code: 'M', name: 'Door', targetMs: 108_000, targetSource: 'typed' }]);
  });

  it('says of a target that it is takt, until another one is typed', () => {
    savePart(bench, null, { code: 'M', name: '', target: '1:40', isTakt: true });
    expect(parts()[0]).toMatchObject({ targetMs: 100_000, targetSource: 'takt' });
    savePart(bench, parts()[0]!, { code: 'M', name: '', target: '1:41', isTakt: false });
    expect(parts()[0]).toMatchObject({ targetMs: 101_000, targetSource: 'typed' });
  });

  it('takes how the part is tapped, and leaves it as it is when nobody touched it', () => {
    savePart(bench, null, { code: 'M', name: '', target: '2', tapping: 'start-stop' });
    savePart(bench, parts()[0]!, { code: 'M', name: 'Door', target: null });
    expect(parts()[0]).toMatchObject({ name: 'Door', tapping: 'start-stop', targetMs: 120_000 });
  });

  it('takes a part without a target, and takes a target away', () => {
    savePart(bench, null, { code: 'M', name: '', target: '' });
    expect(parts()[0]!.targetMs).toBeNull();
    savePart(bench, parts()[0]!, { code: 'M', name: '', target: '2' });
    savePart(bench, parts()[0]!, { code: 'M', name: '', target: ' ' });
    expect(parts()[0]!.targetMs).toBeNull();
  });

  it.each([
    ['0', 'A target is at least one second. Nothing was changed.'],
    ['0:00', 'A target is at least one second. Nothing was changed.'],
    ['99999', 'A target is at most one day. Nothing was changed.'],
    ['1:75', 'Seconds, and minutes of an hour, go up to 59. Nothing was changed.'],
    ['-1', 'This is not a time: write 1:48, 1.8 or 1,8. Nothing was changed.'],
  ])('says one sentence about a target of %s and takes nothing, the code neither', (target, sentence) => {
    expect(savePart(bench, null, { code: 'M', name: '', target })).toBe(sentence);
    expect(parts()).toEqual([]);
    savePart(bench, null, { code: 'M', name: '', target: '2' });
    const before = bench.changes.value;
    expect(savePart(bench, parts()[0]!, { code: 'V', name: 'Other', target })).toBe(sentence);
    expect(bench.changes.value).toBe(before);
  });

  it('wants a code, and one that no other part in use has', () => {
    savePart(bench, null, { code: 'M', name: '', target: '' });
    expect(savePart(bench, null, { code: ' ', name: '', target: '' })).toBe(
      'A part needs a code. Nothing was changed.',
    );
    const taken = 'Another part in use has the code M. Nothing was changed.';
    for (const code of ['M', 'm', ' m ']) {
      expect(savePart(bench, null, { code, name: '', target: '' })).toBe(taken);
    }
    // Its own code may be spelt otherwise.
    expect(savePart(bench, parts()[0]!, { code: 'm', name: '', target: '' })).toBe('');
    retirePart(bench, parts()[0]!.id, true);
    expect(savePart(bench, null, { code: 'M', name: '', target: '' })).toBe('');
  });

  it('records nothing when nothing changed, so that a standard time stays one', () => {
    savePart(bench, null, { code: 'M', name: '', target: '' });
    setTarget(bench, parts()[0]!.id, 90_804, { source: 'standard', study: 't:9' });
    const before = bench.changes.value;
    const typed = { code: 'M', name: '', target: shownTarget(90_804) };
    savePart(bench, parts()[0]!, typed);
    expect(bench.changes.value).toBe(before);
    savePart(bench, parts()[0]!, { ...typed, name: 'Door' });
    expect(parts()[0]).toMatchObject({ name: 'Door', targetSource: 'standard', targetStudy: 't:9' });
  });
});

describe('a target in its field', () => {
  it('is minutes and seconds like everywhere else, and a field left as it stands changes no millisecond of it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1_000, max: 86_400_000 }), (targetMs) => {
        savePart(bench, null, { code: `P${parts().length}`, name: '', target: '' });
        const { id } = parts().at(-1)!;
        setTarget(bench, id, targetMs, { source: 'standard', study: 't:9' });
        const target = shownTarget(targetMs);
        expect(target).toMatch(/^(\d{1,2}:)?\d{1,2}:\d\d(\.\d)?$/);
        savePart(bench, parts().at(-1)!, { code: `p${parts().length}`, name: 'Door', target });
        expect(parts().at(-1)).toMatchObject({ targetMs, targetSource: 'standard' });
      }),
      { seed: 48, numRuns: 100 },
    );
  });

  it('follows a standard that is set while the form is open, as long as nobody touches it', () => {
    savePart(bench, null, { code: 'M', name: '', target: '2' });
    const open = { code: 'M', name: 'Door', target: null };
    setTarget(bench, parts()[0]!.id, 90_804, { source: 'standard', study: 't:9' });
    savePart(bench, parts()[0]!, open);
    expect(parts()[0]).toMatchObject({ name: 'Door', targetMs: 90_804, targetSource: 'standard' });
  });

  it('is taken as typed when it was touched, and typed is where it comes from', () => {
    savePart(bench, null, { code: 'M', name: '', target: '' });
    setTarget(bench, parts()[0]!.id, 90_804, { source: 'standard', study: 't:9' });
    savePart(bench, parts()[0]!, { code: 'M', name: '', target: '4' });
    expect(parts()[0]).toMatchObject({ targetMs: 240_000, targetSource: 'typed' });
  });
});

describe('newReasonId', () => {
  it('is unlike any in use, and unlike one that was left out before', () => {
    const first = newReasonId([], 1_000);
    expect(newReasonId([], 1_001)).not.toBe(first);
    // Two in one millisecond: 1000 is rs in base 36, 1001 rt.
    expect(first).toBe('own-rs');
    expect(newReasonId([{ id: first }], 1_000)).toBe('own-rt');
  });
});
