/** A duration as the operator reads it: 1:48, or 1:02:05 from an hour on. Whole seconds, cut not rounded. */
export function clockFace(ms: number): string {
  const seconds = Math.floor(Math.abs(ms) / 1_000);
  const two = (value: number) => String(value).padStart(2, '0');
  const sign = ms <= -1_000 ? '−' : '';
  const hours = Math.floor(seconds / 3_600);
  const minutes = Math.floor(seconds / 60) % 60;
  return hours > 0
    ? `${sign}${hours}:${two(minutes)}:${two(seconds % 60)}`
    : `${sign}${minutes}:${two(seconds % 60)}`;
}
