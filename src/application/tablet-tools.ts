import type { CopyText } from './ports/copy-text';
import type { HandOver } from './ports/hand-over';
import type { Installation } from './ports/installation';
import type { TabletProbe } from './ports/tablet-probe';

/** What looking after the tablet itself needs: brought when somebody looks. */
export interface TabletTools {
  readonly probe: TabletProbe;
  readonly installation: Installation;
  readonly handOver: HandOver;
  readonly copyText: CopyText;
  readonly release: string;
}
