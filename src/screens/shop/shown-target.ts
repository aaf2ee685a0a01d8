import { roundedClockFace } from '../../i18n/rounded-clock-face';

/**
 * A target as it stands in its field: minutes and seconds, as on every screen. A standard time has more places
 * than a person wants to read; it keeps them, because a field left as it stands changes no target.
 */
export function shownTarget(targetMs: number | null): string {
  return targetMs === null ? '' : roundedClockFace(targetMs);
}
