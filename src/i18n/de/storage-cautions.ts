import type { cautionWords as english } from '../en/storage-cautions';

/** What to know about this tablet before hours of work are trusted to it. */
export const cautionWords: typeof english = {
  little: (size) =>
    `Für Einträge sind auf diesem Tablet nur noch ${size} frei. Zuerst unter Aufzeichnungen eine Sicherung nach außen geben und Platz schaffen.`,
  forgetful:
    'Dies ist ein Browser-Tab, und dieser Browser löscht, was eine Seite in einem Tab ablegt, nach sieben Tagen ohne Nutzung. Pacewright zuerst auf den Home-Bildschirm legen: Teilen, dann Zum Home-Bildschirm. Was hier schon aufgezeichnet ist, kommt mit: hier unter Aufzeichnungen eine Sicherung machen, dort zurückspielen.',
};
