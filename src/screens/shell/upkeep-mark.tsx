import { COARSE_STEP_MS } from '../../domain/records/coarse-clock';
import { upkeepWords as words } from '../../i18n/en/upkeep';
import { formatAge } from '../../i18n/format-age';
import { type App, useApp } from '../app';
import { routeHash } from '../route';

/** One quiet line in the frame when the records want something. */
export function UpkeepMark() {
  const app = useApp();
  const said = whatIsWanted(app);
  return (
    <p class="upkeep" role="status">
      {said && <a href={routeHash({ screen: 'records', id: '', isDemo: app.isDemo })}>{said}</a>}
    </p>
  );
}

/** Damage first, then a clock that tells time badly, then a copy that is due; empty when nothing is. */
function whatIsWanted({ bench, upkeep }: App): string {
  const { copyAge, breaks, missing, snapshot } = upkeep.value;
  if (breaks.length > 0) return words.broken;
  // The strip above says more of what is missing.
  const isCollapsed = snapshot?.ok === false && snapshot.reason === 'count-collapsed';
  if (isCollapsed && missing === 0) return words.collapsed;
  const stepMs = bench.clock.stepMs();
  if (stepMs > COARSE_STEP_MS) return words.coarse(stepMs);
  if (!copyAge?.isDue) return '';
  return copyAge.isCopied ? words.copy(formatAge(copyAge.ageMs)) : words.noCopy;
}
