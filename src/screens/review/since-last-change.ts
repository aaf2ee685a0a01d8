import { lastChange } from '../../domain/weeks/last-change';
import type { PlaceProps } from './place-props';

/** The days since the work was noted as changed: what came before it promises nothing. */
export function sinceLastChange(days: PlaceProps['days'], { notes }: PlaceProps['book']): PlaceProps['days'] {
  const last = lastChange(notes, days[0]?.day ?? '');
  return last === null ? days : days.filter(({ day }) => day >= last);
}
