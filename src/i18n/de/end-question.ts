import type { endQuestion as english } from '../en/end-question';
import { clockFace } from '../format-duration';

/** Words of the question at the end of a turn. */
export const endQuestion: typeof english = {
  endTitle: 'Diesen Einsatz beenden?',
  endText: (count, ms) =>
    `${count} ${count === 1 ? 'Teil' : 'Teile'} fertig. Das angefangene Teil, bisher ${clockFace(ms)}, wird nicht gezählt.`,
  toRework: (count) =>
    `${count} ${count === 1 ? 'Teil wartet' : 'Teile warten'} auf Nacharbeit: in jedem Einsatz hier unter „Voriges Teil“.`,
  endYes: 'Einsatz beenden',
  // Parted where two answers share a narrow place.
  endNo: 'Weiter\u00adarbeiten',
  handOver: 'Oder jemand anderes macht weiter',
  goesOn: (code, ms) => `${code} macht weiter, mit den bisherigen ${clockFace(ms)} dieses Teils`,
  handOverNote: 'Das angefangene Teil gehört dann beiden und steht in keinem eigenen Mittelwert.',
};
