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
  mixed: 'Zwei Revisionen des Verfahrens werden nicht zusammengefasst: nur Studien einer ankreuzen.',
  chooseOne: 'Keine Studie ist angekreuzt: warum, steht bei jeder.',
  incomplete:
    'Diese Studien haben zusammen nicht von jedem Abschnitt einen Messwert: ein halbes Verfahren hat keine Zeit.',
  allowing: (allowance) => `Zuschlag ${allowance}.`,
  stands: (sampling, cycles, groups) =>
    `± ${sampling} % aus ${cyclesOf(cycles)} von ${groups} ${groups === 1 ? 'Person-Tag' : 'Person-Tagen'}.`,
  oneDay:
    'Eine Person an einem Tag: dieses ± sagt nichts über andere und ist kein Maß neben dem von mehreren.',
  moreDays: (t, needed) =>
    `Wenige Person-Tage machen es weit (t = ${t}); etwa ${needed} gleiche reichen für ± 5 %.`,
  withRating: (total) => `Mit ± 5 % auf die beurteilte Zeit: ± ${total} %.`,
  proposal: 'Vorschlag, nicht ausgegeben:',
  issuedAs: (revision, day) => `Revision ${revision}, gültig ab ${day}.`,
  from: (day) => `ab ${day}`,
  blocked:
    'Aus einer Studie, deren Uhrenprobe nicht aufging oder deren Arbeit nicht stabil war, wird keine Vorgabe. Oben abwählen.',

  working: {
    title: 'Wie das zustande kam',
    means: 'Abschnitte werden nach Namen zugeordnet; jeder verwendete Messwert zählt einmal.',
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
      'Groover, Work Systems, Aufgabe 2.7 und Kapitel 13; Searle, Casella & McCulloch, Variance Components, Kapitel 3; ISO/IEC Guide 98-3.',
  },

  issue: (revision) => `Als Revision ${revision} ausgeben`,
  issued: (revision) => `Revision ${revision} sagt das schon.`,
  thin: (cycles) =>
    `Sie beruht auf ${cycles} vollständigen ${cycles === 1 ? 'Zyklus' : 'Zyklen'}, und über die Präzision lässt sich nichts sagen`,
  wide: (pct) => `± ${pct} % verfehlt die angestrebten ± 5 %`,
  allTheSame: 'trotzdem ausgeben',
  inForce: 'Gültig ab',
  checkBy: 'Kontrollstudie bis',
  issuedBy: 'Ausgegeben von',
  dayFault: 'Den Tag angeben, ab dem sie gilt, einen späteren für die Kontrolle, und wer sie ausgibt.',
  setTarget: 'und zur Zielzeit des Teils machen',
  targetPast: 'Es gibt eine neuere Vorgabe.',
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
  cycle: (low, high, isShown) =>
    `Unterschied im mittleren Zyklus: ${low} bis ${high} bei 95 % (Welch)${isShown ? '' : ', keine Änderung gezeigt'}, ohne Leistungsgrad, gelegentliche Arbeit, andere Personen und Tage.`,
  otherBasis: (theirs) => `Ihr Zuschlag ist ${theirs}: verglichen werden Normalzeiten.`,
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
