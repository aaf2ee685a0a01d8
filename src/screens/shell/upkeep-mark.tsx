import { upkeepWords as words } from '../../i18n/en/upkeep';
import { formatAge } from '../../i18n/format-age';
import { useApp } from '../app';
import { routeHash } from '../route';

/** One quiet line in the frame when the records want something: damage first, then a copy that is due. */
export function UpkeepMark() {
  const { upkeep, isDemo } = useApp();
  const { copyAge, breaks, missing, snapshot } = upkeep.value;
  // The strip above says more of what is missing.
  const isCollapsed = missing === 0 && snapshot?.ok === false && snapshot.reason === 'count-collapsed';
  const said =
    breaks.length > 0
      ? words.broken
      : isCollapsed
        ? words.collapsed
        : !copyAge?.isDue
          ? ''
          : copyAge.isCopied
            ? words.copy(formatAge(copyAge.ageMs))
            : words.noCopy;
  return (
    <p class="upkeep" role="status">
      {said && <a href={routeHash({ screen: 'records', id: '', isDemo })}>{said}</a>}
    </p>
  );
}
