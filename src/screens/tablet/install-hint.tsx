import { firstSteps } from '../../i18n/en/first-steps';
import { InstallWay } from './install-way';
import { useInstallation } from './use-installation';

/** Before the first turn: folded, and only where the app runs in a tab. */
export function InstallHint() {
  const installation = useInstallation();
  if (!installation || installation.way() === 'installed') return null;
  return (
    <details class="pace-caution">
      <summary>{firstSteps.install.title}</summary>
      <InstallWay installation={installation} />
    </details>
  );
}
