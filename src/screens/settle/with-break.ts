import type { StopReason } from '../../domain/records/shop-fact';

/** The shop's reasons, with a break among them: a shop that takes it off its list of stops takes breaks all the same. */
export function withBreak(reasons: readonly StopReason[]): readonly StopReason[] {
  return reasons.some(({ category }) => category === 'planned-break')
    ? reasons
    : [...reasons, { id: 'break', label: '', category: 'planned-break' }];
}
