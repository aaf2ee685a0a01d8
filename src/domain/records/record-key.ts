/** Names one record in a text: device and sequence, as `tablet-7:12`. */
export function recordKey({ device, sequence }: { device: string; sequence: number }): string {
  return `${device}:${sequence}`;
}
