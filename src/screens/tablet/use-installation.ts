import { useEffect, useState } from 'preact/hooks';
import type { Installation } from '../../application/ports/installation';
import { useApp } from '../app';

/** How the app may be installed; null until that is known. */
export function useInstallation(): Installation | null {
  const { tabletTools } = useApp();
  const [installation, setInstallation] = useState<Installation | null>(null);
  useEffect(() => {
    // What cannot be brought is not offered.
    tabletTools().then(
      (tools) => setInstallation(tools.installation),
      () => {},
    );
  }, [tabletTools]);
  return installation;
}
