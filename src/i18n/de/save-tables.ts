import type { saveTablesWords as english } from '../en/save-tables';

/** Words of what leaves the tablet from Review. */
export const saveTablesWords: typeof english = {
  title: 'Als Datei mitnehmen',
  span: 'Welche Tage',
  thisDay: (day) => day,
  allDays: (count) => (count === 1 ? 'Der gelesene Tag' : `Alle ${count} gelesenen Tage`),
  spreadsheet: 'Arbeitsmappe mit allen Tabellen',
  parts: 'Teile nach Tagen (CSV)',
  weeks: 'Wochen (CSV)',
  turns: 'Einsätze (CSV)',
  print: 'Drucken',
  note: 'Zum Planen und Verbessern der Arbeit. Kein Nachweis von Arbeitsstunden und kein Lohnnachweis, und es nennt niemanden.',
  seconds:
    'Dateien enthalten jede Zeit ganz. Der Bildschirm kürzt verlorene Zeit und Kategorien auf ganze Sekunden, damit sie sich addieren: Summen können um einige Sekunden abweichen.',
  saved: (name) => `Zum Herunterladen angeboten: ${name}.`,
  failed: (problem) => `Die Tabelle wurde nicht gesichert (${problem}).`,
  about: (first, last, made) => [
    'Tage, Wochen, Einsätze, verlorene Zeit, Stunden und Notizen einer Werkstatt, aus Antippen am Platz.',
    'Zum Planen und Verbessern der Arbeit. Kein Lohnnachweis, kein Nachweis von Arbeitsstunden und kein Maßstab für eine Person.',
    `Tage ${first} bis ${last} und die Wochen, in denen sie liegen; erstellt ${made}.`,
    'mean: Nettozyklus der gewerteten Teile, ohne Stillstände. gross: mit den Stillständen zwischen dem Antippen.',
    'attended_min_per_good_part = mix_min_per_good_part ÷ (efficiency_pct ÷ 100).',
    'efficiency (Zeitgrad) = earned ÷ attended; earned (erbracht) = Zielzeiten der guten Teile, und Rüsten nach seiner Vorgabe.',
    'turns: ein Einsatz ohne ended_at ist noch offen; entered_later 1: nachgetragen, nicht angetippt.',
    'hours: geplante und erbrachte Minuten; eine Stunde, in der nichts endete, sagt nichts.',
    'first_pass_yield = gut beim ersten Mal ÷ fertig. lost_output: verlorene Zeit ohne die, in der Maschine oder Person weiterarbeitete.',
  ],
};
