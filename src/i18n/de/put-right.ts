import type { putRight as english } from '../en/put-right';

/** What is acted on, as it begins a button. */
const them = (count: number) => (count === 1 ? 'Teil' : `${count} Teile`);

/** Words of what a person puts right without being asked. */
export const putRight: typeof english = {
  title: 'Etwas anderes berichtigen',
  note: 'Nichts wird gelöscht, und alles lässt sich zurücknehmen: das Berichtigte steht neben dem Aufgezeichneten, mit wem und warum.',
  turn: 'Welcher Einsatz?',
  turnLine: (from, parts) => `${from}, ${parts} ${parts === 1 ? 'Teil' : 'Teile'}`,

  whats: {
    parts: 'Teile',
    person: 'Person',
    time: 'Stillstand oder Zeitspanne',
    count: 'Aufgeschriebene Stückzahl',
    away: 'Einsatz zurückziehen',
    back: 'Zurücknehmen',
  },
  fromPart: 'Von Teil',
  toPart: 'bis Teil',
  howMany: (count) => (count === 1 ? 'Dieses Teil:' : `Diese ${count} Teile:`),
  mark: (count, as) => `${them(count)} kennzeichnen: ${as}`,
  good: 'Gut',
  rework: 'Nachgearbeitet',
  scrap: 'Ausschuss',
  wasTwo: 'Es waren zwei Teile',
  wasNone: 'Es war kein Teil',
  setAside: 'Nicht in Mittelwerte',
  setAsideAll: (count) => `${them(count)} aus den Mittelwerten lassen`,
  takeBack: 'Wieder in Mittelwerte',
  takeBackAll: (count) => `${them(count)} wieder in die Mittelwerte nehmen`,
  changeTo: (code) => `In ${code} ändern`,
  changeAll: (count, code) => `${them(count)} in ${code} ändern`,
  putAs: (from, to, long, what) => `${from} bis ${to} (${long}) zuordnen: ${what}`,
  onRecord: (code) => `${code} ✓ eingetragen`,
  awayNote: 'Der Einsatz und seine Teile zählen nicht mehr; im Protokoll bleibt alles.',
  taken: 'Der Einsatz ist zurückgezogen.',

  stop: 'Welcher Stillstand?',
  noneBack: 'Noch nichts.',
  from: 'Von',
  to: 'Bis',
  was: 'Es war …',
  work: 'Arbeit an Teilen',
  whose: 'Wer war in dieser Zeit da?',
  missing: 'Beide Zeiten angeben, nacheinander und innerhalb des Einsatzes. Nichts wurde geändert.',
  counted: 'Von Hand gezählte Teile',
  keepCount: 'Stückzahl sichern',
  countNote: (tapped) =>
    `${tapped} ${tapped === 1 ? 'wurde' : 'wurden'} angetippt. Die Stückzahl steht daneben und erzeugt kein Teil: wo ein Tippen fehlt, unter „Teile“ angeben, welches Teil zwei waren.`,
  countKept: 'Die Stückzahl steht jetzt neben dem Tippen.',
  said: (what) => `Berichtigt: ${what}.`,
};
