import type { studyWorking as english } from '../en/study-working';
import { formatNumber } from '../format-number';

/**
 * Words of the workings: what a figure is, how it comes about, and where its form is from. The symbols are those of
 * the English sources, in every language.
 */
export const studyWorking: typeof english = {
  words: 'In Worten',
  symbols: 'Formel',
  numbers: 'Zahlen, erst hier gerundet',
  leftOut: 'Ausgeschlossen',
  nothingLeftOut: 'nichts',
  source: 'Quelle',
  close: 'Schließen',
  leftOutReading: (cycle, time, cause) => `Zyklus ${cycle}: ${time}, ${cause}`,
  leftOutMissed: (cycle, cause) => `Zyklus ${cycle}: nicht gemessen, ${cause}`,
  withAll: (mean) => `Mit den ausgeschlossenen wäre der Mittelwert aller gemessenen Werte ${mean}.`,

  n: {
    what: 'Verwendete Messwerte',
    words: 'seine Messwerte ohne die mit einer Ursache ausgeschlossenen',
    symbols: 'n = Messwerte − ausgeschlossene',
    numbers: (n, all, excluded) => `${all} − ${excluded} = ${n}`,
    source: 'Kein Test schließt einen Messwert aus; ASTM E178 behält, was Zufall sein kann.',
  },
  observed: {
    what: 'Mittlere Istzeit',
    words: 'Summe der verwendeten Istzeiten, geteilt durch ihre Anzahl',
    symbols: 'OT = Σ OTᵢ ÷ n',
    source: 'Arithmetisches Mittel.',
  },
  rating: {
    what: 'Mittlerer Leistungsgrad',
    words: 'Mittelwert der Leistungsgrade der verwendeten Messwerte; wird nicht weiter verwendet',
    symbols: 'R = Σ Rᵢ ÷ n',
    machine: 'Von der Maschine bestimmt: jeder Leistungsgrad ist 100.',
    source: 'Normalleistung = 100.',
  },
  normal: {
    what: 'Normalzeit',
    words: 'Mittelwert aus jeder Istzeit mal ihrem eigenen Leistungsgrad',
    symbols: 'NT = Σ (OTᵢ · Rᵢ ÷ 100) ÷ n',
    machine: 'Eine Maschine wird nie beurteilt: ihre NT ist ihre OT.',
    source: 'Mit einem Leistungsgrad je Abschnitt wie in Heizer & Render, Operations Management.',
  },
  frequency: {
    what: 'Vorkommen je Arbeitseinheit',
    words: 'wie oft der Abschnitt in einer Arbeitseinheit vorkommt, nach dem Verfahren',
    symbols: 'f = 1 ÷ (Einheiten je Vorkommen · Teile je Zyklus)',
    source: 'Das Verfahren; in ANSI/IISE Z94 „noncyclic element“.',
  },
  perUnit: {
    what: 'Normalzeit je Arbeitseinheit',
    words: 'Normalzeit mal Vorkommen je Arbeitseinheit',
    symbols: 'NT · f',
    source: 'Wie oben.',
  },
  precision: {
    what: 'Präzision bei 95 %',
    words: 'halbe Breite des Intervalls der mittleren Normalzeit, als Anteil dieses Mittelwerts',
    symbols: '± = 100 · t · s ÷ (√n · NT)',
    numbers: (n, s, t, half, mean) =>
      `n = ${n}, s = ${s}, t(${formatNumber(0.975, 3)}; n − 1) = ${t}: halbe Breite ${half} von ${mean}`,
    range: (low, high, mean) =>
      `Die Messwerte liegen zwischen ${low} und ${high}; mittlere Normalzeit ${mean}. Unter fünf gibt es kein Intervall.`,
    source: 'NIST/SEMATECH e-Handbook, 1.3.5.2. Das gilt für diese Person an diesem Tag.',
  },
  needed: {
    what: 'Nötige Messwerte für ± 5 % bei 95 %',
    spread: (mean, s) => `x̄ = ${mean}, s = ${s} (Istzeiten), k = ${formatNumber(0.05, 2)}`,
    raw: (raw, n) => `n = ${raw}, also ${n}`,
    iterated: (n) => `kleinstes n, das sie erfüllt: ${n}`,
    t: {
      words: 'kleinste Anzahl, deren eigenes Intervall so schmal wäre wie verlangt',
      symbols: 'n ≥ (t(0,975; n − 1) · s ÷ (k · x̄))²',
      source: 'Definition.',
    },
    tPilot: {
      words: 'mit t, einmal bestimmt aus den Messwerten, die vorliegen',
      symbols: 'n = (t · s ÷ (k · x̄))²',
      source: 'Niebel & Freivalds, Methods, Standards, and Work Design.',
    },
    z: {
      words: 'mit dem Quantil der Normalverteilung, als wäre die Streuung bekannt',
      symbols: 'n = (1,96 · s ÷ (k · x̄))²',
      source: 'Heizer & Render, Operations Management, Gleichung 10-4.',
    },
    ilo: {
      words: 'Kurzform für 95,45 %, mit der Abweichung der Messwerte, die vorliegen',
      symbols: 'n = (40 · √(n′ Σx² − (Σx)²) ÷ Σx)²',
      source: 'International Labour Office, Introduction to Work Study.',
    },
  },
  sum: {
    words: 'Summe der Normalzeiten seiner Abschnitte je Arbeitseinheit',
    symbols: 'Σ NT · f',
    empty: 'kein solcher Abschnitt',
    source:
      'Das Verfahren. Gelegentliche Arbeit zählt als bei stehender Maschine getan, die vorsichtige Seite.',
  },
  normalTotal: {
    words: 'Arbeit bei stehender Maschine, gelegentliche Arbeit und das Längere von Arbeit im Lauf und Lauf',
    plainWords: 'Summe aller Normalzeiten je Arbeitseinheit',
    symbols: 'NT = NT ext + NT occ + max(NT int; MC)',
    plainSymbols: 'NT = NT ext + NT int + NT occ',
    source: 'Groover, Work Systems, Kapitel 13.',
  },
  standard: {
    words: 'Normalzeit mit den Zuschlägen; für die Zeit der Maschine gilt ein eigener Zuschlag',
    symbols: {
      normal_time: 'ST = NT · (1 + A)',
      shift: 'ST = NT ÷ (1 − A)',
    },
    machineSymbols: {
      normal_time: 'ST = (NT ext + NT occ)(1 + A) + max(NT int (1 + A); MC (1 + Aₘ))',
      shift: 'ST = (NT ext + NT occ) ÷ (1 − A) + max(NT int ÷ (1 − A); MC ÷ (1 − Aₘ))',
    },
    source:
      'Stevenson, Operations Management, Gleichungen 7-6 bis 7-8; mit Maschine: Groover, Work Systems, Aufgabe 2.7.',
  },
  uncertainty: {
    words:
      'was die Messwerte offen lassen (h), ± 5 % auf das Beurteilte in ST, und gelegentliche Arbeit: ihre Streuung, und wie oft sie kommt, wo das nur gesehen wurde (u_f)',
    symbols: 'u = √(h² + (5 % · beurteilt ÷ ST)² + u_f²)',
    numbers: (h, rating, frequency, total) => `√(${h}² + ${rating}² + ${frequency}²) = ± ${total} %`,
    unknown: (elements) => `Nicht darin, weil unter fünf Messwerte keine Streuung zeigen: ${elements}.`,
    cycles: (n, h) =>
      `h ist das halbe Intervall des beurteilten Zyklus bei 95 %: ± ${h} % aus ${n} vollständigen ${n === 1 ? 'Zyklus' : 'Zyklen'}. Das gilt für diese Person an diesem Tag.`,
    source: 'ISO/IEC Guide 98-3 (GUM) 5.1.2, 5.1.3. ± 5 % ist das übliche Ziel beim Üben des Beurteilens.',
  },
  pieces: {
    words: 'wie oft die Vorgabezeit in eine Stunde geht',
    symbols: 'Stück = 60 min ÷ ST',
    source: 'Arithmetik.',
  },
  hours: {
    words: 'Stunden, die hundert Arbeitseinheiten nach Vorgabe brauchen',
    symbols: 'Stunden = ST · 100 ÷ 60 min',
    source: 'Arithmetik.',
  },
  governs: {
    words: 'der längere Zweig während des Maschinenlaufs, mit Zuschlägen',
    symbols: {
      normal_time: 'NT int (1 + A) gegen MC (1 + Aₘ)',
      shift: 'NT int ÷ (1 − A) gegen MC ÷ (1 − Aₘ)',
    },
    source: 'Groover, Work Systems, Kapitel 13.',
    alone: 'Bei laufender Maschine wird nichts getan: es gibt keinen zweiten Zweig zum Vergleichen.',
    nobody: 'Kein Abschnitt wird von der Maschine bestimmt.',
  },
};
