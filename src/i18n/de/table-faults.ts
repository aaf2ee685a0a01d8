import type { tableFaultWords as english } from '../en/table-faults';

const rules = {
  count: 'eine ganze Zahl von 1 bis 1000000000',
  time: 'eine Zeit von 0 bis unter 1000000000 s',
  rating: 'ein Leistungsgrad über 0 und höchstens 1000',
  units: 'eine Zahl von Arbeitseinheiten über 0 und höchstens 1000000000',
  allowance: 'ein Prozentsatz von 0 bis 1000',
  shiftAllowance: 'ein Prozentsatz von 0 bis unter 100, als Anteil der Schicht',
};

const cells = ({ found, wanted }: { found: number; wanted: number }) =>
  `Die Zeile hat ${found} Zellen und die Kopfzeile ${wanted}`;

const differs = ({ text, first, firstLine }: { text: string; first: string; firstLine: number }) =>
  `Diese Zeile sagt ${text} und Zeile ${firstLine} ${first}`;

/** Why a table is refused: where, and what is wrong there. Also printed by `npm run recompute`, in English. */
export const tableFaultWords: typeof english = {
  at: (line, column, what) => `Zeile ${line}, Spalte ${column}: ${what}.`,
  what: {
    'empty-file': 'Die Datei ist leer',
    'not-text':
      'Das ist kein Text in UTF-8: Die Datei ist keine Messwerttabelle oder in einem anderen Zeichensatz gespeichert',
    'no-readings': 'Nach der Kopfzeile folgt kein Messwert',
    'too-long-for-copy': 'Eine Studie der Tabelle ist länger, als eine Sicherung fassen kann',
    'quote-not-closed':
      'Eine Zelle beginnt mit einem Anführungszeichen, und bis zum Ende der Datei schließt keines sie',
    'quote-inside-cell': 'Ein Anführungszeichen steht in einer Zelle, die nicht mit einem beginnt',
    'text-after-quote': 'Nach dem Anführungszeichen, das die Zelle schließt, folgt noch Text',
    'column-missing': ({ column }) =>
      column === 'observed_s'
        ? 'Die Kopfzeile hat keine solche Spalte und auch kein watch_s dafür'
        : 'Die Kopfzeile hat keine solche Spalte',
    'column-twice': 'Die Kopfzeile hat diese Spalte zweimal',
    'too-few-cells': cells,
    'too-many-cells': cells,
    'cell-empty': 'Die Zelle ist leer, und jede Zeile braucht sie',
    'time-missing': 'Die Zeit fehlt, und nur eine ausgeschlossene Zeile darf ohne sein',
    'cause-missing': 'Ein Messwert wird nur mit Ursache ausgeschlossen, und die Zelle ist leer',
    'not-a-number': ({ text, decimalMark }) =>
      `${text} ist keine Zahl mit ${decimalMark === '.' ? 'Dezimalpunkt' : 'Dezimalkomma'}`,
    'out-of-range': ({ text, rule }) => `${text} ist nicht ${rules[rule]}`,
    'unknown-word': ({ text, allowed }) => `${text} ist keines von ${allowed.join(', ')}`,
    'machine-rated': ({ ratingPct }) =>
      `Ein Abschnitt der Maschine hat immer Leistungsgrad 100, und diese Zeile sagt ${ratingPct}`,
    'watch-backwards': ({ text, before }) => `Die Uhr läuft rückwärts, von ${before} auf ${text}`,
    'differs-in-study': (fault) => `${differs(fault)}, für dieselbe Studie ${fault.of}`,
    'differs-in-element': (fault) => `${differs(fault)}, für denselben Abschnitt ${fault.of}`,
  },
};
