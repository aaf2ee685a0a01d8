import type { upkeepWords as english } from '../en/upkeep';
import { formatNumber } from '../format-number';

/** Words of the frame about how the records fare. */
export const upkeepWords: typeof english = {
  copy: (age) => `Letzte Sicherung außerhalb: ${age}`,
  noCopy: 'Noch keine Sicherung außerhalb',
  broken: 'Ein Eintrag ist beschädigt: siehe Aufzeichnungen',
  coarse: (ms) => `Die Uhr dieses Browsers geht in Schritten von ${formatNumber(ms)} ms`,
  collapsed: 'Einträge fehlen: siehe Aufzeichnungen',
};
