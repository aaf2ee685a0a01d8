import { useState } from 'preact/hooks';
import type { Installation } from '../../application/ports/installation';
import { firstSteps } from '../../i18n/en/first-steps';

/** A button where the browser offers to install the app, until that was answered. */
export function InstallOffer({ installation }: { installation: Installation }) {
  const [, setAnswered] = useState(false);
  if (installation.way() !== 'offered') return null;
  const install = async () => {
    await installation.install();
    setAnswered(true);
  };
  return (
    <button type="button" class="button" onClick={install}>
      {firstSteps.install.go}
    </button>
  );
}
