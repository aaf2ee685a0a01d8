// Saves all records as a backup file without the app: plain, so that it works when the bundle does not. It must
// write byte for byte what the app writes; a test holds both against each other.

/** The names of the tablet's shelves and of the file's format, as in the app. They are never renamed. */
export const names = { database: 'pacewright', journal: 'pacewright-journal', reserve: 'pacewright-reserve' };
const FORMAT = 'pacewright-backup';
export const FORMAT_VERSION = 1;
const MOST_BREAKS = 100;

const encoder = new TextEncoder();

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

/** CRC-32 of a text in UTF-8, going on from an earlier one. */
function checksum(text, before = 0) {
  let rest = ~before;
  for (const byte of encoder.encode(text)) rest = (rest >>> 8) ^ crcTable[(rest ^ byte) & 0xff];
  return ~rest >>> 0;
}

function chainOf({ device, sequence, stream, stamp, fact }, before) {
  return checksum(JSON.stringify([device, sequence, stream, stamp, fact]), before);
}

/** The first 32 bits of the fractional parts of a root of the first primes (FIPS 180-4, section 4.2.2 and 5.3.3). */
function primeFractions(count, power) {
  const found = [];
  for (let candidate = 2; found.length < count; candidate += 1) {
    if (Array.from({ length: candidate - 2 }, (_, n) => n + 2).some((n) => candidate % n === 0)) continue;
    found.push(((candidate ** power % 1) * 2 ** 32) | 0);
  }
  return found;
}
const shaStart = primeFractions(8, 1 / 2);
const shaSteps = primeFractions(64, 1 / 3);

/** SHA-256 of bytes that come piece by piece (FIPS 180-4): the browser's own wants them all at once, and https. */
class Sha256 {
  state = Int32Array.from(shaStart);
  block = new Uint8Array(64);
  filled = 0;
  bytes = 0;
  words = new Int32Array(64);

  update(data) {
    this.bytes += data.length;
    for (let from = 0; from < data.length; ) {
      const part = data.subarray(from, from + 64 - this.filled);
      this.block.set(part, this.filled);
      this.filled += part.length;
      from += part.length;
      if (this.filled === 64) this.take();
    }
  }

  hex() {
    const bits = this.bytes * 8;
    this.block.fill(0, this.filled);
    this.block[this.filled] = 0x80;
    if (this.filled >= 56) {
      this.take();
      this.block.fill(0);
    }
    const view = new DataView(this.block.buffer);
    view.setUint32(56, Math.floor(bits / 2 ** 32));
    view.setUint32(60, bits >>> 0);
    this.take();
    return Array.from(this.state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
  }

  take() {
    const { words, state } = this;
    const view = new DataView(this.block.buffer);
    const turned = (word, by) => (word >>> by) | (word << (32 - by));
    for (let at = 0; at < 16; at += 1) words[at] = view.getInt32(at * 4);
    for (let at = 16; at < 64; at += 1) {
      const a = words[at - 15];
      const b = words[at - 2];
      const low = turned(a, 7) ^ turned(a, 18) ^ (a >>> 3);
      const high = turned(b, 17) ^ turned(b, 19) ^ (b >>> 10);
      words[at] = (words[at - 16] + low + words[at - 7] + high) | 0;
    }
    let [a, b, c, d, e, f, g, h] = state;
    for (let at = 0; at < 64; at += 1) {
      const choice = (e & f) ^ (~e & g);
      const first =
        (h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + choice + shaSteps[at] + words[at]) | 0;
      const majority = (a & b) ^ (a & c) ^ (b & c);
      const second = ((turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + majority) | 0;
      [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
    }
    [a, b, c, d, e, f, g, h].forEach((word, place) => {
      state[place] = (state[place] + word) | 0;
    });
    this.filled = 0;
  }
}

/** The pieces of a backup file of these records, which are in the order of device and sequence. */
export function* backupPieces(records, { release, device, madeAt }) {
  const hash = new Sha256();
  const taken = (text) => {
    const bytes = encoder.encode(text);
    hash.update(bytes);
    return bytes;
  };
  const devices = [];
  const breaks = [];
  let last = null;
  yield taken(`${JSON.stringify({ format: FORMAT, version: FORMAT_VERSION, release, device, madeAt })}\n`);
  for (const record of records) {
    const { device: of, sequence, stream, stamp, fact, chain } = record;
    const own = devices.at(-1);
    if (own?.device === of) {
      if (sequence !== last.sequence + 1)
        breaks.push({ device: of, sequence: last.sequence + 1, why: 'missing' });
      else if (chainOf(record, last.chain) !== chain) breaks.push({ device: of, sequence, why: 'changed' });
      own.records += 1;
      own.last = sequence;
    } else {
      if (sequence > 1) breaks.push({ device: of, sequence: 1, why: 'missing' });
      else if (chainOf(record, 0) !== chain) breaks.push({ device: of, sequence, why: 'changed' });
      devices.push({ device: of, records: 1, first: sequence, last: sequence });
    }
    last = record;
    yield taken(`${JSON.stringify({ device: of, sequence, stream, stamp, fact, chain })}\n`);
  }
  const counts = { records: devices.reduce((sum, each) => sum + each.records, 0), devices };
  const found = { breakCount: breaks.length, breaks: breaks.slice(0, MOST_BREAKS) };
  yield encoder.encode(`${JSON.stringify({ end: FORMAT, ...counts, ...found, sha256: hash.hex() })}\n`);
}

/** A line of the journal as its record; null when it was torn or damaged. */
export function journalRecord(line) {
  const [, sum, content, json] = /^([0-9a-f]{8}) (\S+ \d+ (.*))$/s.exec(line) ?? [];
  if (!content || Number.parseInt(sum, 16) !== checksum(content)) return null;
  return JSON.parse(json);
}

const bySequence = (a, b) => a.sequence - b.sequence;
const keyOf = ({ device, sequence }) => `${device}:${sequence}`;
const goesOn = (record, end) =>
  record.sequence === end.sequence + 1 && chainOf(record, end.chain) === record.chain;

/**
 * Each record once, in the order of device and sequence. Those of the database stay where they are, then come those of
 * the journal, of whose lines of one number the last holds, then those of the reserve. Whose number has another record
 * by then, or who goes on from such a one, goes to the end: its tap may have been acknowledged too.
 */
export function merged(database, journal = [], reserve = []) {
  const devices = new Map();
  const of = ({ device }) => {
    if (!devices.has(device))
      devices.set(device, { there: new Map(), apart: new Map(), numbersApart: new Set(), held: [] });
    return devices.get(device);
  };
  for (const record of database) of(record).there.set(record.sequence, record);
  const lastChains = new Map(journal.map((record) => [keyOf(record), record.chain]));
  for (const record of journal) {
    const { there, apart, numbersApart } = of(record);
    const { sequence, chain } = record;
    if (there.get(sequence)?.chain === chain) continue;
    const isOverwritten = lastChains.get(keyOf(record)) !== chain;
    const before = there.get(sequence - 1);
    const isApart =
      there.has(sequence) || numbersApart.has(sequence - 1) || (before && !goesOn(record, before));
    if (!isOverwritten && !isApart) there.set(sequence, record);
    else {
      if (!isOverwritten) numbersApart.add(sequence);
      apart.set(`${sequence} ${chain}`, record);
    }
  }
  for (const record of reserve) of(record).held.push(record);
  return [...devices.keys()].sort().flatMap((device) => {
    const { there, apart, held } = devices.get(device);
    const fromJournal = behind([...there.values()].sort(bySequence), [...apart.values()]);
    return behind(fromJournal, held);
  });
}

/** A device's records with others of it put behind them, as `renumberRecords` of the app does it. */
function behind(log, records) {
  let end = log.at(-1) ?? { sequence: 0, chain: 0 };
  const inLog = new Map(log.map((record) => [record.sequence, record]));
  const lowest = Math.min(...records.map(({ sequence }) => sequence));
  const known = new Map();
  for (const [saying, record] of sayings(log.filter(({ sequence }) => sequence >= lowest))) {
    known.set(saying, keyOf(record));
  }
  let newKeys = new Map();
  const all = log.slice();
  let isAnyMoved = false;
  for (const row of rowsOf(records)) {
    const [first] = row;
    const atEnd = inLog.get(first.sequence - 1);
    if (first.sequence > lowest && atEnd && goesOn(first, atEnd)) newKeys = new Map();
    for (const [saying, record] of sayings(row)) {
      const before = known.get(saying);
      if (before) {
        newKeys.set(keyOf(record), before);
        continue;
      }
      const isBehindGap = record.sequence > end.sequence + 1 && !isAnyMoved;
      const placed = goesOn(record, end) || isBehindGap ? record : moved(record, end, newKeys);
      isAnyMoved ||= placed !== record;
      newKeys.set(keyOf(record), keyOf(placed));
      known.set(saying, keyOf(placed));
      all.push(placed);
      end = placed;
    }
  }
  return all;
}

/** The record behind another one, and what it says of those that were moved before it. */
function moved(record, end, newKeys) {
  const { device } = record;
  const sequence = end.sequence + 1;
  newKeys.set(keyOf(record), keyOf({ device, sequence }));
  const told = JSON.parse(JSON.stringify(record), (_, value) =>
    typeof value === 'string' ? value.replace(/^.+?:\d+(?=$|[/#])/, (key) => newKeys.get(key) ?? key) : value,
  );
  const unchained = { ...told, sequence };
  return { ...unchained, chain: chainOf(unchained, end.chain) };
}

/** Rows in which each record goes on from the one before, those with the lowest first number first. */
function rowsOf(records) {
  const rows = [];
  for (const record of records) {
    const row = rows.at(-1);
    if (row && goesOn(record, row.at(-1))) row.push(record);
    else rows.push([record]);
  }
  return rows.sort(([a], [b]) => bySequence(a, b));
}

/** Each with what it says and when, whatever numbers of its device are in it; the second of two alike is another one. */
function sayings(row) {
  const times = new Map();
  return row.map((record) => {
    const { device, stream, stamp, fact } = record;
    const said = JSON.stringify([stream, stamp, fact], (_, value) =>
      typeof value === 'string' && value.startsWith(`${device}:`) ? device : value,
    );
    const time = (times.get(said) ?? 0) + 1;
    times.set(said, time);
    return [`${time} ${said}`, record];
  });
}
