import type { tableFaultWords as english } from '../en/table-faults';

const rules = {
  count: 'un número entero de 1 a 1000000000',
  time: 'un tiempo de 0 a menos de 1000000000 s',
  rating: 'una valoración mayor que 0 y de 1000 como máximo',
  units: 'un número de unidades de trabajo mayor que 0 y de 1000000000 como máximo',
  allowance: 'un porcentaje de 0 a 1000',
  shiftAllowance: 'un porcentaje de 0 a menos de 100, como parte del turno',
};

const cells = ({ found, wanted }: { found: number; wanted: number }) =>
  `la fila tiene ${found} celdas y la cabecera ${wanted}`;

const differs = ({ text, first, firstLine }: { text: string; first: string; firstLine: number }) =>
  `esta fila dice ${text} y la línea ${firstLine} ${first}`;

/** Why a table is refused: where, and what is wrong there. Also printed by `npm run recompute`, in English. */
export const tableFaultWords: typeof english = {
  at: (line, column, what) => `Línea ${line}, columna ${column}: ${what}.`,
  what: {
    'empty-file': 'el archivo está vacío',
    'not-text':
      'esto no es texto en UTF-8: el archivo no es una tabla de lecturas o se guardó con otro juego de caracteres',
    'no-readings': 'después de la cabecera no hay ninguna lectura',
    'too-long-for-copy': 'un estudio de la tabla es más largo de lo que cabe en una copia',
    'quote-not-closed': 'una celda empieza con comillas y ninguna la cierra antes del final del archivo',
    'quote-inside-cell': 'hay comillas dentro de una celda que no empieza con ellas',
    'text-after-quote': 'sigue más texto después de las comillas que cierran la celda',
    'column-missing': ({ column }) =>
      column === 'observed_s'
        ? 'la cabecera no tiene esa columna, ni watch_s en su lugar'
        : 'la cabecera no tiene esa columna',
    'column-twice': 'la cabecera tiene esta columna dos veces',
    'too-few-cells': cells,
    'too-many-cells': cells,
    'cell-empty': 'la celda está vacía y todas las filas la necesitan',
    'time-missing': 'falta el tiempo, y solo una fila excluida puede ir sin él',
    'cause-missing': 'una lectura solo se excluye con una causa, y la celda está vacía',
    'not-a-number': ({ text, decimalMark }) =>
      `${text} no es un número con ${decimalMark === '.' ? 'punto' : 'coma'} decimal`,
    'out-of-range': ({ text, rule }) => `${text} no es ${rules[rule]}`,
    'unknown-word': ({ text, allowed }) => `${text} no es ninguno de estos: ${allowed.join(', ')}`,
    'machine-rated': ({ ratingPct }) =>
      `un elemento de la máquina se valora siempre en 100, y esta fila dice ${ratingPct}`,
    'watch-backwards': ({ text, before }) => `el reloj va hacia atrás, de ${before} a ${text}`,
    'differs-in-study': (fault) => `${differs(fault)}, para el mismo estudio ${fault.of}`,
    'differs-in-element': (fault) => `${differs(fault)}, para el mismo elemento ${fault.of}`,
  },
};
