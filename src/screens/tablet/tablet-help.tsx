import { useState } from 'preact/hooks';
import { changeWords } from '../../i18n/en/changes';
import { firstSteps } from '../../i18n/en/first-steps';
import { selfCheckWords } from '../../i18n/en/self-check';
import { tabletWords as words } from '../../i18n/en/tablet';
import { useApp } from '../app';
import { TABLET_PLACE } from '../route';
import { GUIDE_PLACE, guideShown, isAsked } from '../shell/guide-shown';
import { ReleaseChanges } from '../shell/release-changes';
import { Group } from './group';
import { InstallWay } from './install-way';
import { useInstallation } from './use-installation';

/** What helps with the tablet itself: its check, what a release brought, installing, the way through the demo. */
export function TabletHelp({ close }: { close(): void }) {
  const { bench, go, isDemo, isUnlatched, jotter, route, tablet } = useApp();
  const installation = useInstallation();
  const [isListed, setListed] = useState(false);
  const isKept = tablet.value.isKept && bench.shop.value.isLatched && !isUnlatched.value;
  const check = () => {
    go('records', TABLET_PLACE);
    close();
  };
  const guide = () => {
    jotter.write(GUIDE_PLACE, null);
    guideShown.value = true;
    if (!isAsked(route.value.screen)) go('pace');
    close();
  };
  return (
    <>
      <Group title={words.help}>
        {!isKept && (
          <button type="button" class="button" onClick={check}>
            {selfCheckWords.title}
          </button>
        )}
        <button type="button" class="button" aria-expanded={isListed} onClick={() => setListed(!isListed)}>
          {changeWords.title}
        </button>
        {isDemo && (
          <button type="button" class="button" onClick={guide}>
            {firstSteps.guide.open}
          </button>
        )}
        {isListed && <ReleaseChanges count={changeWords.releases.length} />}
      </Group>
      {installation && installation.way() !== 'installed' && (
        <Group title={firstSteps.install.title}>
          <InstallWay installation={installation} />
        </Group>
      )}
    </>
  );
}
