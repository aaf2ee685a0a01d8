import type { studyWorking as english } from '../en/study-working';
import { formatNumber } from '../format-number';

/**
 * Words of the workings: what a figure is, how it comes about, and where its form is from. The symbols are those of
 * the English sources, in every language.
 */
export const studyWorking: typeof english = {
  words: 'En palabras',
  symbols: 'Fórmula',
  numbers: 'Números, redondeados solo aquí',
  leftOut: 'Excluidas',
  nothingLeftOut: 'ninguna',
  source: 'Fuente',
  close: 'Cerrar',
  leftOutReading: (cycle, time, cause) => `ciclo ${cycle}: ${time}, ${cause}`,
  leftOutMissed: (cycle, cause) => `ciclo ${cycle}: sin medir, ${cause}`,
  withAll: (mean) => `Con las excluidas, la media de todas las lecturas medidas sería ${mean}.`,

  n: {
    what: 'Lecturas usadas',
    words: 'sus lecturas, sin las excluidas por una causa',
    symbols: 'n = lecturas − excluidas',
    numbers: (n, all, excluded) => `${all} − ${excluded} = ${n}`,
    source: 'Ninguna prueba excluye una lectura; ASTM E178 conserva lo que puede ser azar.',
  },
  observed: {
    what: 'Tiempo observado medio',
    words: 'suma de los tiempos observados que se usan, entre su número',
    symbols: 'OT = Σ OTᵢ ÷ n',
    source: 'Media aritmética.',
  },
  rating: {
    what: 'Valoración media',
    words: 'media de las valoraciones de las lecturas usadas; no se usa para nada más',
    symbols: 'R = Σ Rᵢ ÷ n',
    machine: 'Condicionado por la máquina: toda valoración es 100.',
    source: 'Ritmo tipo = 100.',
  },
  normal: {
    what: 'Tiempo normal',
    words: 'media de cada tiempo observado por su propia valoración',
    symbols: 'NT = Σ (OTᵢ · Rᵢ ÷ 100) ÷ n',
    machine: 'Una máquina nunca se valora: su NT es su OT.',
    source: 'Con una valoración por elemento, como en Heizer & Render, Operations Management.',
  },
  frequency: {
    what: 'Veces por unidad de trabajo',
    words: 'cuántas veces viene el elemento en una unidad de trabajo, según el método',
    symbols: 'f = 1 ÷ (unidades por vez · piezas por ciclo)',
    source: 'El método; en ANSI/IISE Z94, «noncyclic element».',
  },
  perUnit: {
    what: 'Tiempo normal por unidad de trabajo',
    words: 'tiempo normal por las veces que viene en una unidad de trabajo',
    symbols: 'NT · f',
    source: 'Como arriba.',
  },
  precision: {
    what: 'Precisión al 95 %',
    words: 'la mitad del ancho del intervalo del tiempo normal medio, como parte de esa media',
    symbols: '± = 100 · t · s ÷ (√n · NT)',
    numbers: (n, s, t, half, mean) =>
      `n = ${n}, s = ${s}, t(${formatNumber(0.975, 3)}; n − 1) = ${t}: semiancho ${half} de ${mean}`,
    range: (low, high, mean) =>
      `Las lecturas están entre ${low} y ${high}; tiempo normal medio ${mean}. Con menos de cinco no hay intervalo.`,
    source: 'NIST/SEMATECH e-Handbook, 1.3.5.2. Habla de esta persona en este día.',
  },
  needed: {
    what: 'Lecturas necesarias para ± 5 % al 95 %',
    spread: (mean, s) => `x̄ = ${mean}, s = ${s} (tiempos observados), k = ${formatNumber(0.05, 2)}`,
    raw: (raw, n) => `n = ${raw}, o sea, ${n}`,
    iterated: (n) => `el menor n que la cumple: ${n}`,
    t: {
      words: 'el menor número cuyo propio intervalo sería tan estrecho como se pide',
      symbols: 'n ≥ (t(0,975; n − 1) · s ÷ (k · x̄))²',
      source: 'Definición.',
    },
    tPilot: {
      words: 'con t tomada una vez, de las lecturas que hay',
      symbols: 'n = (t · s ÷ (k · x̄))²',
      source: 'Niebel & Freivalds, Methods, Standards, and Work Design.',
    },
    z: {
      words: 'con el cuantil normal, como si se conociera la dispersión',
      symbols: 'n = (1,96 · s ÷ (k · x̄))²',
      source: 'Heizer & Render, Operations Management, ecuación 10-4.',
    },
    ilo: {
      words: 'forma corta para el 95,45 %, con la desviación de las lecturas que hay',
      symbols: 'n = (40 · √(n′ Σx² − (Σx)²) ÷ Σx)²',
      source: 'Oficina Internacional del Trabajo, Introducción al estudio del trabajo.',
    },
  },
  sum: {
    words: 'suma de los tiempos normales de sus elementos por unidad de trabajo',
    symbols: 'Σ NT · f',
    empty: 'ningún elemento así',
    source: 'El método. El trabajo ocasional cuenta como hecho con la máquina parada, el lado prudente.',
  },
  normalTotal: {
    words:
      'trabajo con la máquina parada, trabajo ocasional, y lo que dure más: el trabajo en la marcha o la marcha',
    plainWords: 'suma de todos los tiempos normales por unidad de trabajo',
    symbols: 'NT = NT ext + NT occ + max(NT int; MC)',
    plainSymbols: 'NT = NT ext + NT int + NT occ',
    source: 'Groover, Work Systems, capítulo 13.',
  },
  standard: {
    words: 'tiempo normal con los suplementos; el tiempo de la máquina lleva el suyo',
    symbols: {
      normal_time: 'ST = NT · (1 + A)',
      shift: 'ST = NT ÷ (1 − A)',
    },
    machineSymbols: {
      normal_time: 'ST = (NT ext + NT occ)(1 + A) + max(NT int (1 + A); MC (1 + Aₘ))',
      shift: 'ST = (NT ext + NT occ) ÷ (1 − A) + max(NT int ÷ (1 − A); MC ÷ (1 − Aₘ))',
    },
    source:
      'Stevenson, Operations Management, ecuaciones 7-6 a 7-8; con máquina: Groover, Work Systems, problema 2.7.',
  },
  uncertainty: {
    words:
      'lo que dejan abierto las lecturas (h), ± 5 % sobre lo valorado de ST, y el trabajo ocasional: su dispersión, y cuántas veces viene donde eso solo se vio (u_f)',
    symbols: 'u = √(h² + (5 % · valorado ÷ ST)² + u_f²)',
    numbers: (h, rating, frequency, total) => `√(${h}² + ${rating}² + ${frequency}²) = ± ${total} %`,
    unknown: (elements) => `No incluye, pues menos de cinco lecturas no muestran dispersión: ${elements}.`,
    cycles: (n, h) =>
      `h es la mitad del intervalo del ciclo valorado al 95 %: ± ${h} % de ${n} ${n === 1 ? 'ciclo completo' : 'ciclos completos'}. Habla de esta persona en este día.`,
    source: 'ISO/IEC Guide 98-3 (GUM) 5.1.2, 5.1.3. ± 5 % es la meta habitual al practicar la valoración.',
  },
  pieces: {
    words: 'cuántas veces cabe el tiempo estándar en una hora',
    symbols: 'piezas = 60 min ÷ ST',
    source: 'Aritmética.',
  },
  hours: {
    words: 'horas que llevan cien unidades de trabajo según el estándar',
    symbols: 'horas = ST · 100 ÷ 60 min',
    source: 'Aritmética.',
  },
  governs: {
    words: 'la rama más larga mientras la máquina está en marcha, con los suplementos',
    symbols: {
      normal_time: 'NT int (1 + A) frente a MC (1 + Aₘ)',
      shift: 'NT int ÷ (1 − A) frente a MC ÷ (1 − Aₘ)',
    },
    source: 'Groover, Work Systems, capítulo 13.',
    alone: 'Con la máquina en marcha no se trabaja: no hay segunda rama que comparar.',
    nobody: 'Ningún elemento está condicionado por la máquina.',
  },
};
