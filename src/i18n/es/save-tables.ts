import type { saveTablesWords as english } from '../en/save-tables';

/** Words of what leaves the tablet from Review. */
export const saveTablesWords: typeof english = {
  title: 'Sacar de la tableta',
  span: 'Qué días',
  thisDay: (day) => day,
  allDays: (count) => (count === 1 ? 'El único día leído' : `Los ${count} días leídos`),
  spreadsheet: 'Hoja de cálculo con todas las tablas',
  parts: 'Piezas por día (CSV)',
  weeks: 'Semanas (CSV)',
  turns: 'Periodos (CSV)',
  print: 'Imprimir',
  note: 'Para planificar y mejorar el trabajo. No es un registro de horas trabajadas ni de nóminas, y no nombra a nadie.',
  seconds:
    'Los archivos guardan cada tiempo completo. La pantalla corta a segundos enteros el tiempo perdido y el reparto, para que sumen: una suma puede diferir en unos segundos.',
  saved: (name) => `Ofrecido como descarga: ${name}.`,
  failed: (problem) => `No se guardó la tabla (${problem}).`,
  about: (first, last, made) => [
    'Días, semanas, periodos de trabajo, tiempo perdido, horas y notas de un taller, a partir de toques en el puesto.',
    'Para planificar y mejorar el trabajo. No es un registro de nóminas ni de horas trabajadas, ni una medida de una persona.',
    `Días del ${first} al ${last}, y las semanas en que caen; hecho ${made}.`,
    'mean: ciclo neto de las piezas que cuentan, sin paradas. gross: con las paradas entre los toques.',
    'attended_min_per_good_part = mix_min_per_good_part ÷ (efficiency_pct ÷ 100).',
    'efficiency (eficiencia) = earned ÷ attended; earned (ganado) = objetivos de las piezas buenas, y preparaciones con su estándar.',
    'turns: un periodo de trabajo sin ended_at sigue abierto; entered_later 1: anotado después, no tocado.',
    'hours: minutos previstos y ganados; una hora en la que no terminó nada no dice nada.',
    'first_pass_yield = buenas a la primera ÷ terminadas. lost_output: tiempo perdido menos el tiempo en que la máquina o la persona siguió trabajando.',
  ],
};
