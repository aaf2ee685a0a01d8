import type { LogRecord } from '../domain/records/log-record';
import { SHOP_STREAM } from '../domain/records/log-record';
import { recordKey } from '../domain/records/record-key';
import type { Stamp } from '../domain/records/stamp';
import { factShapes, shopKinds } from './backup-fact-shapes';
import {
  count,
  exactly,
  filledText,
  isObject,
  notNegative,
  numberThat,
  type Shape,
  text,
} from './backup-shape';

/** The end of the year 9999: a moment beyond it cannot be written as a date. */
const LAST_WALL_MS = 253_402_300_799_999;
const DAY_MIN = 1_440;

export const stampShape = exactly<Stamp>({
  run: text,
  monoMs: notNegative,
  wallMs: numberThat((value) => Number.isInteger(value) && value >= 0 && value <= LAST_WALL_MS),
  zone: text,
  offsetMin: numberThat((value) => Math.abs(value) <= DAY_MIN),
});

/** Blanks and colons would be read as the end of the name where a record is named in a text. */
const deviceShape: Shape = (value) => (typeof value === 'string' && /^[^\s:]{1,64}$/.test(value) ? null : '');

const envelope = exactly<LogRecord>({
  device: deviceShape,
  sequence: count,
  stream: filledText,
  stamp: stampShape,
  fact: (value) => (isObject(value) ? null : ''),
  chain: numberThat((value) => Number.isInteger(value) && value >= 0 && value <= 0xffff_ffff),
});

export type RecordShape =
  | { readonly ok: true; readonly record: LogRecord }
  | { readonly ok: false; readonly where: string }
  | { readonly ok: false; readonly kind: string };

/** What every release can tell of a record: that it has its place, its stamp, a fact, and its checksum. */
export function recordEnvelope(value: unknown): RecordShape {
  const where = envelope(value);
  return where === null ? { ok: true, record: value as LogRecord } : { ok: false, where };
}

/** Whether this is a record as this release writes them; where not, or the kind of fact it does not know. */
export function recordShape(value: unknown): RecordShape {
  const outside = recordEnvelope(value);
  if (!outside.ok) return outside;
  const { record } = outside;
  const { kind } = record.fact;
  const shape = factShapes.get(kind);
  if (!shape) return typeof kind === 'string' ? { ok: false, kind } : { ok: false, where: '.fact.kind' };
  const where = shape(record.fact);
  if (where !== null) return { ok: false, where: `.fact${where}` };
  return isInItsStream(record) ? outside : { ok: false, where: '.stream' };
}

function isInItsStream(record: LogRecord): boolean {
  const { fact, stream } = record;
  if (shopKinds.has(fact.kind)) return stream === SHOP_STREAM;
  return 'starts' in fact ? stream === recordKey(record) : stream !== SHOP_STREAM;
}
