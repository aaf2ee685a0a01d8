import { selfCheckWords as words } from '../../i18n/en/self-check';
import type { TabletLine } from './tablet-lines';

/** What was found, as plain text for whoever helps: figures and the browser, no record and no name. */
export function tabletText(
  lines: readonly TabletLine[],
  around: {
    readonly release: string;
    readonly browser: string;
    readonly screen: string;
    readonly madeAt: string;
  },
): string {
  return [
    `Pacewright ${around.release}`,
    `${words.made}: ${around.madeAt}`,
    `${words.browser}: ${around.browser}`,
    `${words.page}: ${around.screen}`,
    '',
    ...lines.map(({ name, state, found }) => `[${words.states[state]}] ${name}: ${found}`),
    '',
  ].join('\n');
}
