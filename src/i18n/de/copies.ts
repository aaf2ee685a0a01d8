import type { copiesWords as english } from '../en/copies';
import { formatNumber } from '../format-number';

const counted = (count: number, one: string, more: string) =>
  `${formatNumber(count)} ${count === 1 ? one : more}`;
const records = (count: number) => counted(count, 'Eintrag', 'Einträge');
/** As it stands after "von". */
const ofRecords = (count: number) => counted(count, 'Eintrag', 'Einträgen');
const breaks = (count: number) => counted(count, 'Bruchstelle', 'Bruchstellen');

/** Words about copies outside the tablet, restoring them, snapshots, and the check of all records. */
export const copiesWords: typeof english = {
  records,
  inDemo:
    'Die Beispielwerkstatt ist erfunden: sie braucht keine Sicherung, und keine eigene Sicherung wird in sie eingelesen.',
  keep: {
    title: 'Sicherung außerhalb aufbewahren',
    text: 'Ein verlorenes oder kaputtes Tablet nimmt seine Einträge mit. Nur eine Sicherung an einem anderen Ort übersteht das.',
    age: (age) => `Letzte Sicherung: ${age}.`,
    none: 'Noch keine Sicherung gemacht.',
    since: (count) =>
      count === 0
        ? 'Seither wurde nichts erfasst.'
        : `${counted(count, 'neuerer Eintrag fehlt', 'neuere Einträge fehlen')} darin.`,
    notYet: (count) => `${records(count)} ${count === 1 ? 'liegt' : 'liegen'} nur auf diesem Tablet.`,
    how: {
      folder: 'Sie wurde in den Ordner geschrieben und zurückgelesen.',
      shared: 'Sie wurde an das Teilen-Menü übergeben.',
      downloaded: 'Sie wurde zum Herunterladen angeboten; ob sie behalten wurde, sagt der Browser nicht.',
    },
    make: 'Sicherung machen',
    making: 'Sicherung wird geschrieben und zurückgelesen …',
    lock: 'Mit einer Passphrase schützen',
    lockNote:
      'Ohne Passphrase kann die Datei lesen, wer sie bekommt. Mit Passphrase öffnet sie nur diese: aufschreiben, denn niemand kann sie wiederherstellen.',
    phrase: 'Passphrase',
    again: 'Noch einmal dieselbe',
    phraseShort: 'Eine Passphrase braucht mindestens acht Zeichen. Drei oder vier Wörter sind besser.',
    phraseDiffers: 'Die beiden Passphrasen sind verschieden.',
    noCryptography:
      'Dieser Browser kann eine Datei hier nicht schützen; die App unter einer https-Adresse öffnen.',
    ready: (name, count, size) => `${name}: ${records(count)}, ${size}, zurückgelesen und unversehrt.`,
    unsaved: (count) =>
      ` ${counted(count, 'noch nicht gesicherter Eintrag fehlt', 'noch nicht gesicherte Einträge fehlen')} darin.`,
    withBreaks: (count) => ` Das Protokoll hat ${breaks(count)}; alles Lesbare ist in der Sicherung.`,
    share: 'Teilen …',
    download: 'Herunterladen',
    cancel: 'Abbrechen',
    close: 'Schließen',
    outcome: {
      shared: (name) => `An das Teilen-Menü übergeben: ${name}. Nachsehen, ob sie angekommen ist.`,
      refused: (name) => `Das System nahm ${name} nicht an. Stattdessen herunterladen.`,
      cancelled: (name) => `${name} wurde nicht geteilt.`,
    },
    downloaded: (name) =>
      `Zum Herunterladen angeboten: ${name}. Nachsehen, ob sie da ist, dann vom Tablet wegkopieren.`,
    notVerified: (sentence) =>
      `Keine Sicherung gemacht: was geschrieben wurde, lässt sich nicht zurücklesen. ${sentence}`,
    notWritten: (problem) => `Keine Sicherung gemacht (${problem}). Die Einträge sind, wie sie waren.`,
  },
  folder: {
    title: 'Ein Ordner für Sicherungen',
    text: 'Ein Netzlaufwerk oder eine Speicherkarte. Nach jedem beendeten Einsatz und jeder beendeten Studie wird dort von selbst gesichert, eine Datei je Tag. Diese Sicherungen sind nicht geschützt.',
    choose: 'Ordner wählen …',
    other: 'Anderen wählen …',
    chosen: (name) => `Sicherungen gehen in den Ordner „${name}“.`,
    asks: (name) => `Der Browser will erneut gefragt werden, bevor er in „${name}“ schreibt.`,
    ask: 'Erlauben',
    now: 'Jetzt dort sichern',
    forget: 'Keinen Ordner nutzen',
    forgotten: 'Es wird kein Ordner mehr genutzt. Was darin liegt, bleibt.',
    done: (name, count) => `${name}: ${records(count)}, zurückgelesen und unversehrt.`,
    collapsed: (count, before) =>
      `Nichts wurde geschrieben: das Protokoll enthält ${records(count)}, die heutige Sicherung dort ${formatNumber(before)}. Sie blieb, wie sie war.`,
    noFolder: 'Kein Ordner gewählt.',
    failed: (problem) => `Der Ordner konnte nicht genutzt werden (${problem}).`,
  },
  missing: {
    text: (count) =>
      `${counted(count, 'Eintrag, der auf diesem Tablet war, ist', 'Einträge, die auf diesem Tablet waren, sind')} weg. Eine Sicherung übernehmen: die vollständigste auf diesem Tablet ist unten schon geöffnet, falls es eine gibt. Eine von außerhalb kann vollständiger sein.`,
    leave: 'So lassen',
  },
  restore: {
    title: 'Sicherung zurückspielen',
    text: 'Ergänzt, was diesem Tablet fehlt, und ändert nichts Vorhandenes. Auch Sicherungen anderer Tablets lassen sich ergänzen.',
    choose: 'Sicherung wählen …',
    reading: 'Sicherung wird gelesen und verglichen …',
    refused: (sentence) => `${sentence} Nichts wurde geändert.`,
    unreadable: (problem) =>
      `Die Einträge auf diesem Tablet ließen sich zum Vergleich nicht lesen (${problem}). Nichts wurde geändert.`,
    locked: 'Diese Sicherung ist geschützt. Die Passphrase dazu eingeben.',
    open: 'Öffnen',
    rows: {
      made: 'Gemacht',
      holds: 'Enthält',
      added: 'Hier neu',
      there: 'Schon hier',
      clashes: 'Widersprüche',
      breaks: 'Bruchstellen darin',
    },
    made: (day, device, release) => `${day} auf ${device}, Version ${release}`,
    tablets: (names) => `von ${names}`,
    clash: (device, sequence) => `Eintrag ${sequence} von ${device}`,
    clashText: (count, places) =>
      `${records(count)} mit anderem Inhalt unter derselben Nummer, zuerst: ${places}. Nichts kann übernommen werden: was davon stimmt, kann kein Programm sagen.`,
    none: 'keine',
    ahead: (day, time) =>
      `Die Uhr des anderen Tablets geht vor: seine Einträge reichen bis ${day}, ${time}. Was dort festgelegt wurde, eine Zielzeit oder die PIN, gilt bis dahin vor dem, was hier festgelegt wird. Zuerst die falsche Uhr richtig stellen.`,
    breaks: (count) => `${breaks(count)} hatte das Protokoll, als die Sicherung gemacht wurde`,
    take: 'Übernehmen',
    leave: 'Lassen',
    sharedCodes: (codes) =>
      `Zwei Teile heißen ${codes}. Eines in der Werkstatt umbenennen oder außer Gebrauch nehmen, sonst stehen beide zur Wahl.`,
    nothingNew: 'Alles in dieser Sicherung ist schon hier.',
    busy: 'Gerade läuft eine Zeitmessung. Zuerst den Einsatz oder die Studie beenden; nichts wurde geändert.',
    taking: 'Einträge werden übernommen …',
    done: (count) => `${records(count)} übernommen. Alles, was hier war, ist, wie es war.`,
    cutShort: (written, of, problem) =>
      `Der Speicher nahm nach ${formatNumber(written)} von ${ofRecords(of)} nichts mehr an (${problem}). Die übernommenen sind unversehrt; für den Rest noch einmal zurückspielen.`,
  },
  overlaps: {
    title: 'Zwei Tablets, eine Person, dieselbe Zeit',
    text: 'Einer der beiden Einsätze gehört vielleicht jemand anderem: im Rückblick dieses Tages die Person berichtigen.',
    line: (person, minutes, first, second) =>
      `${person}: ${minutes} min in beiden, auf ${first} und auf ${second}`,
    review: 'Rückblick öffnen',
    unknown: 'Ob sich Einsätze zweier Tablets überschneiden, ließ sich nicht lesen.',
  },
  snapshots: {
    title: 'Tägliche Sicherung auf diesem Tablet',
    text: 'Wenn nichts gemessen wird; die letzten acht bleiben. Sie hilft bei beschädigtem Protokoll, nicht nach dem Löschen der Browserdaten.',
    none: 'Noch keine.',
    impossible: 'Dieser Browser kann keine behalten. Umso wichtiger sind Sicherungen außerhalb.',
    line: records,
    look: 'Ansehen',
    lookAt: (day) => `Ansehen: die Sicherung vom ${day}`,
    collapsed: (now, before, day) =>
      `Das Protokoll enthält ${records(now)}, die Sicherung vom ${day} ${formatNumber(before)}. Einträge gingen verloren: diese Sicherung ansehen und übernehmen. Bis dahin wird keine ältere aufgegeben.`,
    failed: (problem) => `Die heutige konnte nicht gemacht werden (${problem}).`,
  },
  check: {
    title: 'Alle Einträge prüfen',
    text: 'Folgt der Kette der Prüfsummen vom ersten Eintrag bis zum letzten. Das findet Schäden, keine Täuschung.',
    go: 'Alle Einträge prüfen',
    going: (done) => `${formatNumber(done)} Einträge geprüft …`,
    sound: (count, tablets) =>
      `${records(count)} von ${counted(tablets, 'Tablet', 'Tablets')}: alle folgen ohne Bruch aufeinander.`,
    broken: (count, broken) =>
      `${records(count)} geprüft; ${breaks(broken)}. Alles Lesbare lässt sich weiter sichern und ausgeben.`,
    missing: (device, sequence) => `Eintrag ${sequence} von ${device} fehlt.`,
    changed: (device, sequence) => `Eintrag ${sequence} von ${device} ist nicht, was geschrieben wurde.`,
    unreadable: (device, sequence) => `Eintrag ${sequence} von ${device} kann in keine Sicherung.`,
    more: (count) => `und ${formatNumber(count)} weitere`,
    recent: 'Unter den neuesten Einträgen:',
    failed: (problem) => `Die Prüfung wurde nicht fertig (${problem}). Nichts wurde gelöscht.`,
  },
};
