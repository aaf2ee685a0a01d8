import type { turnQuestion as english } from '../en/turn-question';
import { clockFace } from '../format-duration';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the questions beside the figures, and of those that take their place. */
export const turnQuestion: typeof english = {
  outcomeTitle: (ms) => `Voriges Teil, ${roundedClockFace(ms)}: wie ist es?`,
  undoTitle: (what, ms) => `Vor ${clockFace(ms)}: ${what}. Zurücknehmen?`,
  undoYes: 'Zurücknehmen',
  undoNo: 'So lassen',
  undoNote: 'Das Tippen bleibt in den Aufzeichnungen, auch dass es zurückgenommen wurde.',
  firstOff: 'Erstteil: Rüsten',
  reasonTitle: 'Warum? Angabe freiwillig',
  reasonTitleAfter: (ms) => `Stillstand ${clockFace(ms)}: warum?`,
  gapTitle: (ms) => `${roundedClockFace(ms)} keine Arbeit: was war es?`,
  sayWhy: (ms) => `Stillstand ${clockFace(ms)} – Grund angeben`,
  saidWhy: (ms, why) => `Stillstand ${clockFace(ms)}: ${why}`,
  sayWhat: (ms, to) => `${roundedClockFace(ms)} vor ${to} – was war es?`,
  openCount: (count) => `${count} offen, das Neueste zuerst:`,
  answered: (word, left) =>
    left === 0 ? `Beantwortet: ${word}` : `Beantwortet: ${word}. Noch ${left} offen`,
};
