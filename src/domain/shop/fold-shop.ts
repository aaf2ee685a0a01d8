import { localDay } from '../day/local-day';
import { inOrder } from '../records/in-order';
import type { LogRecord } from '../records/log-record';
import { recordKey } from '../records/record-key';
import { firstReasons, type Part, type Shop } from './shop';

export const emptyShop: Shop = {
  parts: [],
  people: [],
  reasons: firstReasons,
  learners: [],
  calendar: null,
  calendars: [],
  isLatched: false,
};

/** The shop from the records of its stream. Later records win; nothing is ever taken out of the log. */
export function foldShop(records: readonly LogRecord[]): Shop {
  return inOrder(records).reduce(withShopRecord, emptyShop);
}

/** The shop after one more record. */
export function withShopRecord(shop: Shop, record: LogRecord): Shop {
  const { fact } = record;
  const changePart = (id: string, change: (part: Part) => Part): Shop => ({
    ...shop,
    parts: shop.parts.map((part) => (part.id === id ? change(part) : part)),
  });
  switch (fact.kind) {
    case 'part-defined':
      return { ...shop, parts: [...shop.parts, newPart(recordKey(record), fact.code, fact.name)] };
    case 'part-described':
      return changePart(fact.part, (part) => ({ ...part, code: fact.code, name: fact.name }));
    case 'part-retired':
      return changePart(fact.part, (part) => ({ ...part, retired: fact.retired }));
    case 'target-set':
      return changePart(fact.part, (part) => ({
        ...part,
        targetMs: fact.targetMs,
        targetSource: fact.targetMs === null ? null : fact.source,
        targetStudy: fact.targetMs === null ? null : (fact.study ?? null),
      }));
    case 'standard-issued':
      return changePart(fact.part, (part) =>
        part.targetSource === 'standard' && part.targetMs !== Math.round(fact.standardTimeMs)
          ? { ...part, targetSource: 'past' }
          : part,
      );
    case 'tapping-set':
      return changePart(fact.part, (part) => ({ ...part, tapping: fact.tapping }));
    case 'method-revised':
      return changePart(fact.part, (part) => {
        const earlier = fact.inPlace ? part.methods.slice(0, -1) : part.methods;
        return {
          ...part,
          methods: [
            ...earlier,
            {
              revision: earlier.length + 1,
              writtenOn: localDay(record.stamp),
              elements: fact.elements,
              partsPerCycle: fact.partsPerCycle,
              conditions: fact.conditions,
            },
          ],
        };
      });
    case 'person-added':
      return shop.people.includes(fact.code) ? shop : { ...shop, people: [...shop.people, fact.code] };
    case 'person-removed':
      return { ...shop, people: shop.people.filter((code) => code !== fact.code) };
    case 'learning-set': {
      const { code, parts } = fact;
      const others = shop.learners.filter((each) => each.code !== code);
      const learner = { code, parts, sinceWallMs: record.stamp.wallMs };
      return { ...shop, learners: parts > 0 ? [...others, learner] : others };
    }
    case 'reasons-set':
      return { ...shop, reasons: fact.reasons };
    case 'calendar-set': {
      const { calendar } = fact;
      const dated = { sinceWallMs: record.stamp.wallMs, calendar };
      return { ...shop, calendar, calendars: [...shop.calendars, dated] };
    }
    case 'pin-set':
      return { ...shop, isLatched: true };
    case 'pin-removed':
      return { ...shop, isLatched: false };
    default:
      return shop;
  }
}

function newPart(id: string, code: string, name: string): Part {
  return {
    id,
    code,
    name,
    retired: false,
    targetMs: null,
    targetSource: null,
    targetStudy: null,
    tapping: 'each-part',
    methods: [],
  };
}
