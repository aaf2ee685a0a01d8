import { spoken } from '../spoken';
/** Words of the workings: what a figure is, how it comes about, and where its form is from. */
export const studyWorking = spoken('studyWorking', {
  words: 'In words',
  symbols: 'Formula',
  numbers: 'Numbers, rounded here only',
  leftOut: 'Left out',
  nothingLeftOut: 'nothing',
  source: 'Source',
  close: 'Close',
  leftOutReading: (cycle: number, time: string, cause: string) => `cycle ${cycle}: ${time}, ${cause}`,
  leftOutMissed: (cycle: number, cause: string) => `cycle ${cycle}: not timed, ${cause}`,
  withAll: (mean: string) => `With those left out the mean of all timed readings would be ${mean}.`,

  n: {
    what: 'Readings used',
    words: 'its readings, without those left out for a cause',
    symbols: 'n = readings − left out',
    numbers: (n: number, all: number, excluded: number) => `${all} − ${excluded} = ${n}`,
    source: 'No test takes a reading out; ASTM E178 keeps what may be chance.',
  },
  observed: {
    what: 'Mean observed time',
    words: 'sum of the observed times used, over their count',
    symbols: 'OT = Σ OTᵢ ÷ n',
    source: 'Arithmetic mean.',
  },
  rating: {
    what: 'Mean rating',
    words: 'mean of the ratings of the readings used; not used further',
    symbols: 'R = Σ Rᵢ ÷ n',
    machine: 'Machine-controlled: every rating is 100.',
    source: 'Standard pace = 100.',
  },
  normal: {
    what: 'Normal time',
    words: 'mean of each observed time times its own rating',
    symbols: 'NT = Σ (OTᵢ · Rᵢ ÷ 100) ÷ n',
    machine: 'A machine is never rated: its NT is its OT.',
    source: 'With one rating an element, as in Heizer & Render, Operations Management.',
  },
  frequency: {
    what: 'Occurrences per work unit',
    words: 'how often the element comes in one work unit, as the method says',
    symbols: 'f = 1 ÷ (units per occurrence · parts per cycle)',
    source: 'The method; in ANSI/IISE Z94 a noncyclic element.',
  },
  perUnit: {
    what: 'Normal time per work unit',
    words: 'normal time times occurrences per work unit',
    symbols: 'NT · f',
    source: 'As above.',
  },
  precision: {
    what: 'Precision at 95 %',
    words: 'half the width of the interval of the mean normal time, as a share of that mean',
    symbols: '± = 100 · t · s ÷ (√n · NT)',
    numbers: (n: number, s: string, t: string, half: string, mean: string) =>
      `n = ${n}, s = ${s}, t(0.975, n − 1) = ${t}: half-width ${half} of ${mean}`,
    range: (low: string, high: string, mean: string) =>
      `The readings lie between ${low} and ${high}; mean normal time ${mean}. Below five there is no interval.`,
    source: 'NIST/SEMATECH e-Handbook, 1.3.5.2. It speaks of this person on this day.',
  },
  needed: {
    what: 'Readings needed for ± 5 % at 95 %',
    spread: (mean: string, s: string) => `x̄ = ${mean}, s = ${s} (observed times), k = 0.05`,
    raw: (raw: string, n: number) => `n = ${raw}, so ${n}`,
    iterated: (n: number) => `smallest n that fulfils it: ${n}`,
    t: {
      words: 'smallest count whose own interval of observed times would be as narrow as asked',
      symbols: 'n ≥ (t(0.975, n − 1) · s ÷ (k · x̄))²',
      source: 'Definition.',
    },
    tPilot: {
      words: 'with t taken once, from the readings in hand',
      symbols: 'n = (t · s ÷ (k · x̄))²',
      source: 'Niebel & Freivalds, Methods, Standards, and Work Design.',
    },
    z: {
      words: 'with the normal quantile, as if the spread were known',
      symbols: 'n = (1.96 · s ÷ (k · x̄))²',
      source: 'Heizer & Render, Operations Management, equation 10-4.',
    },
    ilo: {
      words: 'short form for 95.45 %, with the deviation of the readings in hand',
      symbols: 'n = (40 · √(n′ Σx² − (Σx)²) ÷ Σx)²',
      source: 'International Labour Office, Introduction to Work Study.',
    },
  },
  sum: {
    words: 'sum of the normal times of its elements per work unit',
    symbols: 'Σ NT · f',
    empty: 'no such element',
    source: 'The method. Occasional work counts as done while the machine stands, the cautious side.',
  },
  normalTotal: {
    words: 'work while the machine stands, occasional work, and the longer of work in its run and the run',
    plainWords: 'sum of all normal times per work unit',
    symbols: 'NT = NT ext + NT occ + max(NT int; MC)',
    plainSymbols: 'NT = NT ext + NT int + NT occ',
    source: 'Groover, Work Systems, chapter 13.',
  },
  standard: {
    words: 'normal time with the allowances; the machine’s time takes its own',
    symbols: {
      normal_time: 'ST = NT · (1 + A)',
      shift: 'ST = NT ÷ (1 − A)',
    },
    machineSymbols: {
      normal_time: 'ST = (NT ext + NT occ)(1 + A) + max(NT int (1 + A); MC (1 + Aₘ))',
      shift: 'ST = (NT ext + NT occ) ÷ (1 − A) + max(NT int ÷ (1 − A); MC ÷ (1 − Aₘ))',
    },
    source:
      'Stevenson, Operations Management, equations 7-6 to 7-8; with a machine: Groover, Work Systems, problem 2.7.',
  },
  uncertainty: {
    words:
      'what the readings leave open (h), ± 5 % on what of ST was rated, and occasional work: its spread, and how often it comes where that was only seen (u_f)',
    symbols: 'u = √(h² + (5 % · rated ÷ ST)² + u_f²)',
    numbers: (h: string, rating: string, frequency: string, total: string) =>
      `√(${h}² + ${rating}² + ${frequency}²) = ± ${total} %`,
    unknown: (elements: string) => `Not in it, as fewer than five readings tell no spread: ${elements}.`,
    cycles: (n: number, h: string) =>
      `h is half the interval of the rated cycle at 95 %: ± ${h} % from ${n} whole cycles. It speaks of this person on this day.`,
    source: 'ISO/IEC Guide 98-3 (GUM) 5.1.2, 5.1.3. ± 5 % is the usual aim of rating practice.',
  },
  pieces: {
    words: 'how often the standard time goes into an hour',
    symbols: 'pieces = 60 min ÷ ST',
    source: 'Arithmetic.',
  },
  hours: {
    words: 'hours that a hundred work units take at standard',
    symbols: 'hours = ST · 100 ÷ 60 min',
    source: 'Arithmetic.',
  },
  governs: {
    words: 'the longer branch while the machine runs, allowances in',
    symbols: {
      normal_time: 'NT int (1 + A) against MC (1 + Aₘ)',
      shift: 'NT int ÷ (1 − A) against MC ÷ (1 − Aₘ)',
    },
    source: 'Groover, Work Systems, chapter 13.',
    alone: 'No work is done while the machine runs: there is no second branch to compare.',
    nobody: 'No element is machine-controlled.',
  },
});
