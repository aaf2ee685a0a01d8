import { review } from '../../i18n/en/review';
import { offText } from './against-target-text';
import { sideOfTarget } from './side-of-target';

/** A share of the target where there is little room: an arrow, the figure, and the word under it. */
export function AgainstCell({ share }: { share: number }) {
  const { arrow, word } = review.againstShort[sideOfTarget(share)];
  return (
    <>
      {arrow}&nbsp;{offText(share)}&nbsp;%<small>{word}</small>
    </>
  );
}
