import type { changeWords as english } from '../en/changes';

/** What each release brought, newest first: what whoever uses it will notice, in a few lines. */
export const changeWords: typeof english = {
  title: 'Was neu ist',
  updated: 'Pacewright wurde erneuert.',
  close: 'Schließen',
  release: (version) => `Version ${version}`,
  releases: [
    {
      version: '0.1.0',
      lines: [
        'Die erste Version.',
        'Tempo: ein Tippen je Teil, voraus oder im Verzug, Stillstände, die eigene Aufzeichnung.',
        'Studie: Uhr, Leistungsgrad, Auswertung, Vorgaben, Studien vom Papier.',
        'Zelle: was sie bestimmt, was eine Änderung brächte, Durchlaufzeit.',
        'Rückblick: Tag, Wochen, vorher und nachher, Zusagen.',
        'Aufzeichnungen: zweifach auf dem Tablet, Sicherungen außerhalb, Tabellen, Prüfung des Tablets.',
      ],
    },
  ],
};
