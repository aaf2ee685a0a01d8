import type { ComparisonTerms } from '../../../domain/records/review-fact';

type Periods = Pick<ComparisonTerms, 'beforeFrom' | 'beforeTo' | 'afterFrom' | 'afterTo'>;

/**
 * What the form suggests: everything before the first noted change against everything since the last one, so that
 * a time of learning between two is in neither; without a note the older and the newer half of the days.
 *
 * @param days newest first
 */
export function periodsAround(
  days: readonly string[],
  changes: readonly { readonly day: string; readonly text: string }[],
): { readonly periods: Periods; readonly title: string } {
  const inOrder = [...days].sort();
  const noted = changes
    .filter(({ day }) => day > inOrder[0]! && day <= inOrder.at(-1)!)
    .sort((a, b) => (a.day < b.day ? -1 : 1));
  const half = inOrder[Math.floor(inOrder.length / 2)]!;
  const firstChange = noted[0]?.day ?? half;
  const lastChange = noted.at(-1)?.day ?? half;
  const before = inOrder.filter((day) => day < firstChange);
  const after = inOrder.filter((day) => day >= lastChange);
  const [only] = inOrder;
  return {
    periods: {
      beforeFrom: before[0] ?? only!,
      beforeTo: before.at(-1) ?? only!,
      afterFrom: after[0] ?? only!,
      afterTo: after.at(-1) ?? only!,
    },
    title: noted[0]?.text ?? '',
  };
}
