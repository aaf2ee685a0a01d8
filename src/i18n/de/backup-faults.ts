import type { backupFaultWords as english } from '../en/backup-faults';

/** Why a copy is refused. What it means for the records on the tablet is not said here: they are as they were. */
export const backupFaultWords: typeof english = {
  'cannot-read': ({ problem }) => `Die Datei war nicht zu lesen (${problem}).`,
  'not-a-backup': 'Diese Datei ist keine Sicherung von Pacewright, oder ihr Anfang ist beschädigt.',
  'made-by-newer-version': ({ release }) =>
    `Die Datei stammt von einer neueren Version${named(release)}; erst diese Version nehmen, dann wiederherstellen.`,
  'unknown-kind': ({ line, kind, release }) =>
    `Zeile ${line} enthält eine Art Eintrag, die diese Version nicht kennt, ${kind}: Die Datei stammt von einer neueren Version${named(release)} oder ist beschädigt.`,
  'pass-phrase-needed':
    'Die Datei ist verschlossen; sie öffnet sich mit dem Kennsatz, mit dem sie gemacht wurde.',
  'pass-phrase-wrong':
    'Der Kennsatz ist nicht der, mit dem die Datei gemacht wurde, oder der Anfang der Datei ist beschädigt.',
  'no-cryptography':
    'Die Datei ist verschlossen, und dieser Browser kann sie hier nicht öffnen; die App unter einer https-Adresse öffnen.',
  'piece-damaged': ({ piece }) =>
    `Die Datei ist beschädigt oder abgeschnitten: Ihr Stück ${piece} lässt sich nicht öffnen.`,
  'not-text': ({ line }) => `Zeile ${line} ist beschädigt: Sie ist kein Text in UTF-8.`,
  'not-json': ({ line }) => `Zeile ${line} ist beschädigt: Sie ist kein JSON.`,
  'line-too-long': ({ line }) => `Zeile ${line} ist länger als jeder Eintrag.`,
  'not-a-record': ({ line, where }) =>
    `Zeile ${line} ist kein Eintrag, wie Pacewright ihn schreibt${where && `, bei ${where}`}.`,
  'out-of-order': ({ line }) => `Zeile ${line} ist nicht in der Reihenfolge oder doppelt.`,
  'record-missing': ({ sequence, device }) => `Eintrag ${sequence} von ${device} fehlt in der Datei.`,
  'record-changed': ({ sequence, device }) =>
    `Eintrag ${sequence} von ${device} ist nicht, was das Tablet geschrieben hat: Seine Prüfsumme passt nicht.`,
  'cut-short': ({ line }) =>
    `Die Datei endet in Zeile ${line}, vor ihrer letzten Zeile: Sie ist abgeschnitten.`,
  'more-after-end': ({ line }) => `Zeile ${line} steht nach dem Ende der Sicherung.`,
  'counts-differ': ({ said, found }) => `Die Datei nennt ${said} Einträge und enthält ${found}.`,
  'contents-changed': 'Die Datei ist nicht, was geschrieben wurde: Ihre Prüfsumme (SHA-256) ist eine andere.',
};

function named(release: string): string {
  return release && `, ${release}`;
}
