import type { LogRecord } from './log-record';

/**
 * Records of several devices in the order in which they are read: by wall clock, then device, then sequence.
 * It orders, it never measures. Records of one device keep their sequence even where its clock was set back,
 * because a device's own order is a fact and its clock is not: from there on they stand where the clock had been.
 */
export function inOrder<Kind extends LogRecord>(records: readonly Kind[]): Kind[] {
  const byDevice = [...records].sort((a, b) =>
    a.device === b.device ? a.sequence - b.sequence : a.device < b.device ? -1 : 1,
  );
  let device = '';
  let atMs = 0;
  const placed = byDevice.map((record) => {
    const { wallMs } = record.stamp;
    atMs = record.device === device ? Math.max(atMs, wallMs) : wallMs;
    device = record.device;
    return { record, atMs };
  });
  return placed.sort((a, b) => a.atMs - b.atMs).map(({ record }) => record);
}
