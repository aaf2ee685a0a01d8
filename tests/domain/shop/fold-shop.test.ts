import { describe, expect, it } from 'vitest';
import type { LogRecord } from '../../../src/domain/records/log-record';
import type { ShopFact } from '../../../src/domain/records/shop-fact';
import type { ElementDefinition } from '../../../src/domain/shop/element-definition';
import { emptyShop, foldShop, withShopRecord } from '../../../src/domain/shop/fold-shop';
import { firstReasons } from '../../../src/domain/shop/shop';
import { recordAt } from '../../support/records';

const load: ElementDefinition = {
  name: 'Load',
  breakPoint: 'clamp clicks',
  elementClass: 'repetitive',
  work: 'manual',
  placement: 'external',
  unitsPerOccurrence: 1,
};

/** Facts one second apart; the first is record t:1. */
const shopRecords = (...facts: ShopFact[]): LogRecord[] =>
  facts.map((fact, place) => recordAt(place + 1, place * 1_000, 'shop', fact));

const define: ShopFact = { kind: 'part-defined', code: 'M', name: 'Medium door' };

/** Issued under revision 1 of a method; only its time matters here. */
const issued = (standardTimeMs: number): ShopFact => ({
  kind: 'standard-issued',
  part: 't:1',
  standardTimeMs,
  normalTimeMs: standardTimeMs,
  terms: { allowancePct: 0, basis: 'normal_time', machineAllowancePct: 0 },
  methodRevision: 1,
  conditions: '',
  studies: ['t:40'],
  cycles: 30,
  operators: ['K7'],
  days: ['2026-03-02'],
  uncertainty: null,
  inForceOn: '2026-03-02',
  checkBy: '2027-03-02',
  issuedBy: 'E1',
});

describe('foldShop', () => {
  it('knows a target that is a standard time as past once another standard is issued, until it is set again', () => {
    const set = (targetMs: number, source: 'standard' | 'typed'): ShopFact => ({
      kind: 'target-set',
      part: 't:1',
      targetMs,
      source,
    });
    const source = (...facts: ShopFact[]) => foldShop(shopRecords(define, ...facts)).parts[0]!.targetSource;
    expect(source(issued(90_000.4), set(90_000, 'standard'), issued(90_000.4))).toBe('standard');
    expect(source(issued(90_000), set(90_000, 'standard'), issued(88_000))).toBe('past');
    expect(source(set(90_000, 'standard'), issued(88_000), set(88_000, 'standard'))).toBe('standard');
    expect(source(set(90_000, 'typed'), issued(88_000))).toBe('typed');
  });

  it('begins with no part, no person and the six reasons that the tablet words', () => {
    expect(foldShop([])).toEqual(emptyShop);
    expect(emptyShop).toMatchObject({ parts: [], people: [] });
    expect(firstReasons.map(({ id }) => id)).toEqual([
      'material',
      'machine',
      'quality',
      'called-away',
      'set-up',
      'break',
    ]);
  });

  it('names a part by the record that defined it, so that a new code changes no record', () => {
    const shop = foldShop(
      shopRecords(define, { kind: 'part-described', part: 't:1', code: 'M-2', name: 'Door, medium' }),
    );
    expect(shop.parts).toMatchObject([{ id: 't:1', code: 'M-2', name: 'Door, medium', retired: false }]);
  });

  it('takes the last target, remembers where it came from, and forgets both when it is taken away', () => {
    const typed: ShopFact = { kind: 'target-set', part: 't:1', targetMs: 90_000, source: 'typed' };
    const standard: ShopFact = {
      kind: 'target-set',
      part: 't:1',
      targetMs: 90_804,
      source: 'standard',
      study: 't:40',
    };
    const away: ShopFact = { kind: 'target-set', part: 't:1', targetMs: null, source: 'typed' };
    expect(foldShop(shopRecords(define, standard, typed)).parts[0]).toMatchObject({
      targetMs: 90_000,
      targetSource: 'typed',
      targetStudy: null,
    });
    expect(foldShop(shopRecords(define, typed, standard)).parts[0]).toMatchObject({
      targetMs: 90_804,
      targetSource: 'standard',
      targetStudy: 't:40',
    });
    expect(foldShop(shopRecords(define, standard, away)).parts[0]).toMatchObject({
      targetMs: null,
      targetSource: null,
      targetStudy: null,
    });
  });

  it('numbers the revisions of a method 1, 2 … and leaves the earlier one as it was', () => {
    const revise = (name: string): ShopFact => ({
      kind: 'method-revised',
      part: 't:1',
      elements: [{ ...load, name }],
      partsPerCycle: 1,
      conditions: '',
    });
    const [part] = foldShop(shopRecords(define, revise('Load'), revise('Load and clamp'))).parts;
    expect(part!.methods.map(({ revision, elements }) => [revision, elements[0]!.name])).toEqual([
      [1, 'Load'],
      [2, 'Load and clamp'],
    ]);
  });

  it('keeps a retired part, and brings it back', () => {
    const retire = (retired: boolean): ShopFact => ({ kind: 'part-retired', part: 't:1', retired });
    expect(foldShop(shopRecords(define, retire(true))).parts).toMatchObject([{ code: 'M', retired: true }]);
    expect(foldShop(shopRecords(define, retire(true), retire(false))).parts[0]!.retired).toBe(false);
  });

  it('lists a code once, and takes it off', () => {
    const add: ShopFact = { kind: 'person-added', code: 'K7' };
    expect(foldShop(shopRecords(add, add, { kind: 'person-added', code: 'M2' })).people).toEqual([
      'K7',
      'M2',
    ]);
    expect(foldShop(shopRecords(add, { kind: 'person-removed', code: 'K7' })).people).toEqual([]);
  });

  it('passes over a fact about a part that it does not know', () => {
    const stray: ShopFact = { kind: 'target-set', part: 'other:9', targetMs: 1_000, source: 'typed' };
    expect(foldShop(shopRecords(define, stray)).parts).toMatchObject([{ id: 't:1', targetMs: null }]);
  });

  it('reads the records of two tablets in the order of the wall clock', () => {
    const own = recordAt(1, 0, 'shop', define);
    const target = (targetMs: number): ShopFact => ({
      kind: 'target-set',
      part: 't:1',
      targetMs,
      source: 'typed',
    });
    const later = recordAt(7, 9_000, 'shop', target(80_000), { device: 'other' });
    const earlier = recordAt(2, 5_000, 'shop', target(90_000));
    expect(foldShop([later, earlier, own]).parts[0]!.targetMs).toBe(80_000);
  });

  it('comes to the same shop record by record', () => {
    const records = shopRecords(
      define,
      { kind: 'target-set', part: 't:1', targetMs: 90_000, source: 'typed' },
      { kind: 'person-added', code: 'K7' },
      { kind: 'reasons-set', reasons: [{ id: 'machine', label: '', category: 'stoppage' }] },
    );
    expect(records.reduce(withShopRecord, emptyShop)).toEqual(foldShop(records));
  });
});
