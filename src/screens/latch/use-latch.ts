import { useApp } from '../app';

/** Whether standards may not be changed now, because the supervisor's PIN is set and was not given. */
export function useLatch(): boolean {
  const { bench, isUnlatched } = useApp();
  return bench.shop.value.isLatched && !isUnlatched.value;
}
