import { useState } from 'preact/hooks';
import { firstSteps } from '../../i18n/en/first-steps';
import { InstallWay } from './install-way';
import { useInstallation } from './use-installation';

/** Before the first turn: folded, and only where the app runs in a tab. */
export function InstallHint() {
  const installation = useInstallation();
  const [, setOpened] = useState(false);
  if (!installation || installation.way() === 'installed') return null;
  return (
    // The browser may have made its offer since this was drawn.
    <details class="pace-caution" onToggle={(event) => setOpened(event.currentTarget.open)}>
      <summary>{firstSteps.install.title}</summary>
      <InstallWay installation={installation} />
    </details>
  );
}
