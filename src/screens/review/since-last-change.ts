import type { PlaceProps } from './place-props';

/** The days since the work was noted as changed: what came before it promises nothing. */
export function sinceLastChange(days: PlaceProps['days'], { notes }: PlaceProps['book']): PlaceProps['days'] {
  const newest = days[0]?.day ?? '';
  const last = notes
    .filter(({ isChange, day }) => isChange && day <= newest)
    .map(({ day }) => day)
    .sort()
    .at(-1);
  return last === undefined ? days : days.filter(({ day }) => day >= last);
}
