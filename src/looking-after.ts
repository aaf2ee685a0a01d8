import type { TabletTools } from './application/tablet-tools';
import { copyText } from './device/copy-text';
import { handOverFile } from './device/hand-over-file';
import { pageInstallation } from './device/page-installation';
import { pageProbe } from './device/page-probe';

/** The parts of main.tsx that look after the tablet itself: a file of their own, beside the first screen's way. */
export const tabletTools: TabletTools = {
  probe: pageProbe,
  installation: pageInstallation,
  handOver: handOverFile,
  copyText,
  release: __RELEASE__,
};
