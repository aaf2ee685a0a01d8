import type { turnQuestion as english } from '../en/turn-question';
import { clockFace } from '../format-duration';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the questions beside the figures, and of those that take their place. */
export const turnQuestion: typeof english = {
  outcomeTitle: (ms) => `Voriges Teil, ${roundedClockFace(ms)}: wie ist es?`,
  undoTitle: (what, ms) => `Vor ${clockFace(ms)}: ${what}. Zurücknehmen?`,
  undoYes: 'Zurücknehmen',
  undoNo: 'So lassen',
  undoNote: 'Tippen und Zurücknehmen bleiben in den Aufzeichnungen.',
  stopInIt: 'Stillstand war darin',
  stopInItSaid: 'Stillstand war darin: in keinem Mittelwert',
  allWorkSaid: 'Alles war Arbeit',
  firstOff: 'Erstteil: Rüsten',
  scrapSaid: 'Ausschuss: keine Zielzeit erbracht',
  reworkSaid: 'Zur Nacharbeit: wartet unter „Voriges Teil“',
  reworkNow: 'Jetzt nacharbeiten',
  reworkLater: 'Später nacharbeiten',
  reworkBegun: 'Nacharbeit begonnen: antippen, wenn das Teil gut ist',
  waitingPart: (code, at, ms) => `${code} von ${at} nacharbeiten, ${roundedClockFace(ms)}`,
  reworking: (code, at) => `Nacharbeit an ${code}, fertig um ${at}`,
  reworkingNote: 'Es bleibt ein Teil. Diese Zeit ist seine Nacharbeit und in keinem Mittelwert.',
  reworkFailed: 'Doch Ausschuss',
  tally: (scrap, marked, waiting, shared) =>
    [
      scrap > 0 && `${scrap} Ausschuss`,
      waiting > 0 && `${waiting} zur Nacharbeit`,
      marked > waiting && `${marked - waiting} nachgearbeitet`,
      shared > 0 && `${shared} zu zweit`,
    ]
      .filter(Boolean)
      .join(' · '),
  changedTo: (code, soFarMs) =>
    soFarMs < 1_000 ? `Ab jetzt ${code}` : `Ab jetzt ${code}, mit den bisherigen ${clockFace(soFarMs)}`,
  reasonTitle: 'Warum? Angabe freiwillig',
  reasonTitleAfter: (ms) => `Stillstand ${clockFace(ms)}: warum?`,
  gapTitle: (ms) => `${roundedClockFace(ms)} keine Arbeit: was war es?`,
  sayWhy: (ms) => `Stillstand ${clockFace(ms)} – Grund angeben`,
  saidWhy: (ms, why) => `${why}: ${clockFace(ms)}`,
  sayWhat: (ms, to) => `${roundedClockFace(ms)} vor ${to} – was war es?`,
  isNext: 'Das ist die nächste Frage: erst lesen',
  answered: (word, left) =>
    left === 0 ? `Beantwortet: ${word}` : `Beantwortet: ${word}. Noch ${left} offen`,
};
