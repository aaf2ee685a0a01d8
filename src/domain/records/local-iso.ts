/** ISO 8601 local time with its offset, from the wall clock of a stamp. */
export function localIso(wallMs: number, offsetMin: number): string {
  const local = new Date(wallMs + offsetMin * 60_000).toISOString().slice(0, -1);
  const size = Math.abs(offsetMin);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${local}${offsetMin < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
