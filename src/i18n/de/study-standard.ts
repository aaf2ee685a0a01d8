import type { studyStandard as english } from '../en/study-standard';
import { formatNumber } from '../format-number';

/** Words of the analysis of studies, of standards, and of standard data. */
export const studyStandard: typeof english = {
  title: (part) => `Vorgabe für ${part}`,
  back: 'Alle Studien',
  reading: 'Studien werden gelesen …',
  failed: 'Die Studien konnten nicht gelesen werden. Sie sind nicht gelöscht.',
  noPart: 'Dieses Teil gibt es in der Werkstatt nicht.',
  noStudies: 'Noch keine beendete Studie dieses Teils.',
  studies: 'Auswertung der Studien',
  obstacles: {
    clock: 'Uhrenprobe ging nicht auf',
    trend: 'die Arbeit war nicht stabil',
    unseen: 'ein Abschnitt wurde nie gesehen',
  },
  otherRevision: (timed, used) => `maß Revision ${timed} des Verfahrens, in Gebrauch ist Revision ${used}`,
  beside: (revision) => `nicht in Revision ${revision} der Vorgabezeit`,
  element: 'Abschnitt',
  together: 'Zusammen',
  perUnit: (unit) => `NT je Teil, ${unit}, und n`,
  normal: 'Normalzeit NT',
  standard: 'Vorgabezeit ST',
  chooseOne: 'Keine Studie ist angekreuzt: warum, steht bei jeder.',
  incomplete:
    'Diese Studien haben zusammen nicht von jedem Abschnitt einen Messwert: ein halbes Verfahren hat keine Zeit.',
  allowing: (allowance) => `Zuschlag ${allowance}.`,
  stands: (sampling, cycles, groups) =>
    groups === 1
      ? `± ${sampling} % aus ${cyclesOf(cycles)} einer Person an einem Tag. Das gilt für diesen Tag: eine zweite Person an einem anderen aufnehmen.`
      : `± ${sampling} % aus ${cyclesOf(cycles)} von ${groups} Person-Tagen.`,
  withRating: (total) => `Mit den eigenen ± 5 % des Leistungsgrads: ± ${total} %.`,
  proposal: 'Vorschlag, nicht ausgegeben:',
  issuedAs: (revision, day) => `Revision ${revision}, gültig ab ${day}.`,
  from: (day) => `ab ${day}`,
  blocked:
    'Aus einer Studie, deren Uhrenprobe nicht aufging oder deren Arbeit nicht stabil war, wird keine Vorgabe. Oben abwählen.',

  working: {
    title: 'Wie das zustande kam',
    means:
      'Abschnitte werden nach Namen zugeordnet; jeder verwendete Messwert jeder Studie, die zählt, zählt einmal.',
    sums: (external, internal, occasional, machine) =>
      `NT ext ${external}, NT int ${internal}, NT occ ${occasional}, MC ${machine} min`,
    terms: (pct, machinePct) => `A ${pct} %, Aₘ ${machinePct} %.`,
    gives: (time) => `ST ${time}`,
    interval: (isMany) =>
      isMany
        ? `h = t(${formatNumber(0.975, 3)}; g − 1) · √(σ_b² · Σnᵢ² ÷ N² + σ_w² ÷ N), über Zyklen in Person-Tagen`
        : `h = t(${formatNumber(0.975, 3)}; n − 1) · s ÷ √n, über vollständige Zyklen`,
    stands: (cycles, groups, h) =>
      `N = ${cycles} ${cycles === 1 ? 'vollständiger Zyklus' : 'vollständige Zyklen'}, g = ${groups} ${groups === 1 ? 'Person-Tag' : 'Person-Tage'}: h = ± ${h} %.`,
    source:
      'Groover, Work Systems, Aufgabe 2.7 und Kapitel 13; Searle, Casella & McCulloch, Variance Components, Kapitel 3 (aus dem Gedächtnis); ISO/IEC Guide 98-3.',
  },

  issue: (revision) => `Als Revision ${revision} ausgeben`,
  issued: (revision) => `Revision ${revision} sagt das schon.`,
  thin: (cycles) =>
    `Sie beruht auf ${cycles} vollständigen ${cycles === 1 ? 'Zyklus' : 'Zyklen'}, und über die Präzision lässt sich nichts sagen: trotzdem ausgeben`,
  wide: (pct) => `± ${pct} % verfehlt die angestrebten ± 5 %: trotzdem ausgeben`,
  inForce: 'Gültig ab',
  checkBy: 'Kontrollstudie bis',
  issuedBy: 'Ausgegeben von',
  dayFault: 'Den Tag angeben, ab dem sie gilt, einen späteren für die Kontrolle, und wer sie ausgibt.',
  setTarget: 'und zur Zielzeit des Teils machen',
  targetNow: (day) => `Die Zielzeit ändert sich jetzt, die Vorgabe gilt ab ${day}.`,
  revisions: 'Vorgaben dieses Teils',
  none: 'Noch keine Vorgabe ausgegeben.',
  number: 'Revision',
  since: 'Gültig ab',
  rests: 'Beruht auf',
  restsOn: (studies, cycles, operators) =>
    `${studies} ${studies === 1 ? 'Studie' : 'Studien'}, ${cyclesOf(cycles)}; ${operators}`,
  isInForce: 'gültig',
  dueTitle: 'Kontrollstudie fällig:',
  due: {
    date: 'ihr Tag ist gekommen',
    method: 'das Verfahren hat eine andere Revision',
    conditions: 'die Bedingungen sind andere',
    drift: 'eine spätere Studie liegt mehr als 5 % daneben',
    'one-operator': 'sie beruht auf einer einzigen Person',
  },
  notDue: 'Nichts verlangt eine Kontrollstudie.',
  against: (revision, pct, direction) =>
    `Gegenüber Revision ${revision}: Normalzeit um ${pct} % ${direction === 'longer' ? 'länger' : 'kürzer'}.`,
  converted: (theirs, as) =>
    `Ihr Zuschlag, ${theirs}, ist ${as}: verglichen werden Normalzeiten, weil die Zuschläge verschiedene Grundlagen haben.`,
  list: {
    title: 'Vorgaben',
    check: 'Kontrollstudie',
    isTarget: 'schon Zielzeit',
    part: 'Teil',
    data: 'Planzeiten: Zeiten für andere Größen',
    sheet: 'Zur Vorgabe dieses Teils',
    paper: 'Studie vom Papier eintippen',
  },
};

function cyclesOf(count: number): string {
  return `${count} ${count === 1 ? 'Zyklus' : 'Zyklen'}`;
}
