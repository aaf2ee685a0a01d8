import { ENOUGH_CYCLES } from '../../domain/cell/cycle-precision';
import { localDay } from '../../domain/day/local-day';
import { cellSource as says, cell as words } from '../../i18n/en/cell';
import { formatDay } from '../../i18n/format-day';
import { formatNumber } from '../../i18n/format-number';
import { useApp } from '../app';
import { routeHash } from '../route';
import { partName } from './part-name';
import type { ReckonedPart } from './reckon-parts';

/** Which study a part is reckoned from, and how far that can be leaned on. */
export function StudySource({ part }: { part: ReckonedPart }) {
  const { isDemo } = useApp();
  const { source, precision, wholeCycles, mix } = part;
  if (!source) {
    const shares = mix
      .filter(({ share }) => share > 0)
      .map((own) => `${own.partCode || words.noCode} ${words.percent(formatNumber(100 * own.share))}`);
    return <p class="small quiet cell-source">{says.mix(words.list(shares))}</p>;
  }
  const { study, title, startedAt, of, why, flagged } = source;
  const isThin = wholeCycles < ENOUGH_CYCLES;
  return (
    <p class="small cell-source">
      <a href={routeHash({ screen: 'study', id: study, isDemo })}>{says.study(title)}</a>{' '}
      <span class="quiet">
        {says.on(formatDay(localDay(startedAt), 'short'))}
        {of > 1 && says.chosen[why](of, ENOUGH_CYCLES)}, {says.cycles(wholeCycles)}
        {!isThin && precision !== null && says.precision(formatNumber(100 * precision, 1))}
        {flagged > 0 && says.flagged(flagged)}
      </span>
      {isThin && <strong class="cell-thin">{says.thin(partName(part))}</strong>}
    </p>
  );
}
