import type { Installation } from '../../application/ports/installation';
import { firstSteps } from '../../i18n/en/first-steps';
import { cautionWords } from '../../i18n/en/storage-cautions';
import { InstallOffer } from './install-offer';

/** Why, and how on this browser; a button where it offers one. */
export function InstallWay({ installation }: { installation: Installation }) {
  const words = firstSteps.install;
  const way = installation.way();
  if (way === 'installed') return null;
  return (
    <>
      <p>{way === 'share' ? cautionWords.forgetful : words.why}</p>
      {way === 'menu' && <p>{words.menu}</p>}
      <InstallOffer installation={installation} />
    </>
  );
}
