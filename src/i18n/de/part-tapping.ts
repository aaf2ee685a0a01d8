import type { partTapping as english } from '../en/part-tapping';
import { formatDay } from '../format-day';
import { formatNumber } from '../format-number';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of how a part is tapped, and of a target that calendar and demand give. */
export const partTapping: typeof english = {
  title: 'Wie getippt wird',
  tappings: { 'each-part': 'Einmal je Teil', 'start-stop': 'Anfang und Ende', elements: 'Jeder Abschnitt' },
  what: {
    'each-part': 'Vom Ende eines Teils bis zum Ende des nächsten: ein Tippen je Teil.',
    'start-stop':
      'Nur die Zeit, in der Hände am Teil sind. Was zwischen zwei Teilen liegt, steht in keinem Zyklus.',
    elements:
      'Ein Tippen am Ende jedes Abschnitts des Verfahrens. Abschnitte der Maschine werden nicht angetippt.',
  },
  needsMethod:
    'Dieses Teil hat noch kein Verfahren mit mindestens zwei Abschnitten; bis dahin gilt einmal je Teil.',
  takt: 'Takt',
  demand: 'Benötigte Teile je Tag (nur zum Rechnen)',
  take: 'Als Zielzeit nehmen',
  working: (net, demand, taktMs, day) =>
    `${formatNumber(net)} min am ${formatDay(day)} ÷ ${formatNumber(demand)} = ${roundedClockFace(taktMs)} je Teil.`,
  rests: (net, attended) =>
    `Alle Pausen sind herausgenommen. Erholung ist Anwesenheit, also hat ein Tag genau im Takt einen Zeitgrad von ${formatNumber((100 * net) / attended)} %: ${net} von ${attended} min.`,
  taken: 'Die Zielzeit ist der Takt.',
  faults: {
    'no-calendar': 'Für den Takt braucht es den Kalender: siehe „Arbeitszeiten“ unter Werkstatt.',
    'no-shift': 'Der Kalender hat in den nächsten zwei Wochen keine Schicht, also gibt es keinen Takt.',
    'no-demand': 'Bitte eine ganze Zahl Teile über 0.',
    absurd: 'Bei so vielen Teilen bliebe für jedes weniger als eine Sekunde oder mehr als ein Tag.',
  },
};
