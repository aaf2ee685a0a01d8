import type { reviewDayMore as english } from '../en/review-day-more';

const setUps = (count: number) => `${count} ${count === 1 ? 'preparación' : 'preparaciones'}`;
const more = (side: 'more' | 'less') => (side === 'more' ? 'más' : 'menos');

/** Words of what stands behind the day: whether it was hard, its hours, and how its figures hang together. */
export const reviewDayMore: typeof english = {
  fair: {
    title: '¿Fue un día lento o un día duro?',
    with: 'Comparado con',
    none: 'No hay otro día con objetivos con el que compararlo.',
    noTarget:
      'Algunas piezas buenas de este día no tenían objetivo; por eso no se puede decir qué exigió el día.',
    alike: (time) => `Una pieza buena llevó ${time} los dos días.`,
    mix: (time, percent, side, other, share) =>
      `Una pieza buena llevó ${time}, un ${percent} % ${more(side)} que el ${other}. De esa diferencia, el ${share} % se debe a la mezcla de piezas.`,
    against: (time, percent, side, other) =>
      `Una pieza buena llevó ${time}, un ${percent} % ${more(side)} que el ${other}, aunque la mezcla habría pedido lo contrario.`,
    beyond: (time, percent, side, other) =>
      `Una pieza buena llevó ${time}, un ${percent} % ${more(side)} que el ${other}; la mezcla por sí sola daría una diferencia mayor.`,
    pictureTitle: 'Tiempo por pieza buena, y lo que exigían las piezas',
    demanded: (time) => `exigido ${time}`,
    took: (time) => `empleado ${time}`,
    efficiency: (percent) => `eficiencia ${percent} %`,
    demandedTitle: 'Lo que exigió el día',
    demandedSays:
      'Los objetivos de las piezas buenas y el estándar de cada preparación, repartidos entre las piezas buenas. El objetivo medio del encabezado no incluye preparaciones.',
    demandedFormula: 'exigido = (Σ objetivos + preparaciones × su estándar) ÷ piezas buenas',
    demandedPut: (of) =>
      `(${of.targets} min + ${setUps(of.count)}, ${of.setUps} min) ÷ ${of.good} = ${of.time}`,
    efficiencyTitle: 'Eficiencia',
    efficiencySays:
      'Tiempo ganado entre tiempo de presencia. Un día que gana sus objetivos en todo su tiempo de presencia tiene el 100 %; las pausas de comida no son presencia, el descanso sí, porque los objetivos lo incluyen.',
    efficiencyFormula: 'eficiencia = ganado ÷ presencia',
    efficiencyPut: (earned, attended, percent) => `${earned} min ÷ ${attended} min = ${percent} %`,
    axis: 'minutos de presencia por pieza buena',
    legend:
      'La barra es lo que exigió el día por sus objetivos y preparaciones (ganado ÷ buenas); la marca vertical, lo que llevó una pieza buena (presencia ÷ buenas). La eficiencia es lo primero ÷ lo segundo: con ella se pueden comparar días duros y días fáciles.',
  },
  hours: {
    title: 'Hora a hora',
    hour: 'Desde',
    plan: 'Plan',
    earned: 'Ganado',
    difference: 'Diferencia acumulada',
    parts: 'Piezas buenas',
    cause: 'Mayor pérdida',
    silent: 'nada terminado',
    ahead: (minutes) => `${minutes} por delante`,
    behind: (minutes) => `${minutes} por detrás`,
    level: 'a la par',
    lost: (reason, minutes) => `${reason}, ${minutes}`,
    all: 'El día',
    earnedTitle: (hour) => `Ganado desde las ${hour}`,
    earnedSays:
      'Los objetivos de las piezas buenas que terminaron en esa hora, y el estándar de cada preparación que terminó en ella.',
    earnedFormula: 'ganado = Σ objetivos + preparaciones × su estándar',
    earnedPut: (parts, ofSetUps, earned) =>
      `${parts} min de piezas + ${ofSetUps} min de preparación = ${earned} min`,
    note: 'En minutos ganados, para que una hora de piezas grandes no parezca lenta. El plan son los minutos de presencia: sin comidas, pero con descanso, porque los objetivos lo incluyen. Una hora en la que no terminó nada no dice nada.',
    efficiency: (earned, plan, percent) =>
      `${earned} minutos ganados de ${plan} previstos son la eficiencia del día, ${percent} %.`,
  },
  bridge: {
    title: 'Del ciclo neto al tiempo por pieza buena',
    net: 'Ciclo neto, media',
    steps: {
      'other-work': 'Trabajo en piezas fuera de la media, y entre piezas',
      scrap: 'Tiempo de las piezas de desecho',
      rework: 'Retrabajo',
      stoppage: 'Paradas',
      'called-away': 'Llamado a otra tarea',
      'set-up': 'Preparación',
      'planned-break': 'Pausas previstas',
      unaccounted: 'Sin justificar',
    },
    perGood: 'Minutos de presencia por pieza buena',
    step: 'Paso',
    minutes: 'Minutos',
    note: 'Cada paso es su tiempo ÷ piezas buenas del día. La suma cuadra.',
  },
  parts: {
    title: 'Tres tiempos por pieza, y rendimiento a la primera',
    part: 'Pieza',
    net: 'Ciclo neto',
    gross: 'Con paradas',
    perGood: 'Presencia por pieza buena',
    captured: 'De ellas, en la media',
    yield: 'Buenas a la primera',
    yieldValue: (percent, low, high) => `${percent} % (de ${low} a ${high})`,
    all: 'Todas las piezas',
    note: 'Ciclo neto: Σ neto ÷ n. Con paradas: Σ (neto + paradas) ÷ n. Presencia por pieza buena: todo el tiempo de presencia hasta sus toques ÷ piezas buenas. Entre paréntesis: intervalo del 95 % (Wilson).',
  },
  ratios: {
    title: 'Indicadores de ISO 22400-2',
    name: 'Nombre en la norma',
    formula: 'Fórmula',
    value: 'Valor',
    none: 'Hace falta un objetivo para cada pieza del día.',
    names: {
      workerEfficiency: 'Eficiencia del trabajador',
      throughputRate: 'Tasa de producción',
      allocationEfficiency: 'Eficiencia de asignación',
      utilizationEfficiency: 'Eficiencia de utilización',
      availability: 'Disponibilidad',
      effectiveness: 'Efectividad',
      qualityRatio: 'Tasa de calidad',
      overallEquipmentEffectiveness: 'Índice OEE',
      netEquipmentEffectiveness: 'Índice NEE',
      setUpRatio: 'Tasa de preparación',
      technicalEfficiency: 'Eficiencia técnica',
      firstPassYield: 'Rendimiento a la primera',
      scrapRatio: 'Tasa de desecho',
      reworkRatio: 'Tasa de retrabajo',
    },
    formulas: {
      workerEfficiency: 'tiempo trabajado ÷ presencia sin pausas',
      throughputRate: 'piezas ÷ tiempo de ejecución de la orden, por hora',
      allocationEfficiency: '(producción + preparación + demora) ÷ tiempo de ocupación previsto',
      utilizationEfficiency: 'producción ÷ (producción + preparación + demora)',
      availability: 'producción ÷ tiempo de ocupación previsto',
      effectiveness: 'tiempo previsto por pieza × piezas ÷ producción',
      qualityRatio: 'buenas ÷ piezas',
      overallEquipmentEffectiveness: 'disponibilidad × efectividad × tasa de calidad',
      netEquipmentEffectiveness:
        '(producción + preparación) ÷ tiempo de ocupación previsto × efectividad × tasa de calidad',
      setUpRatio: 'preparación ÷ (producción + preparación)',
      technicalEfficiency: 'producción ÷ (producción + demora)',
      firstPassYield: 'buenas a la primera ÷ inspeccionadas',
      scrapRatio: 'desecho ÷ piezas',
      reworkRatio: 'retrabajo ÷ piezas',
    },
    note: 'La unidad de trabajo es el puesto; el tiempo de ocupación previsto es el tiempo de presencia sin las pausas hechas. La efectividad, y lo que sale de ella, pasa del 100 % donde las piezas fueron más rápidas de lo previsto; el índice NEE cuenta también las preparaciones. La eficiencia del trabajador es aquí tiempo trabajado, no tiempo ganado.',
  },
  cost: {
    title: 'Lo que costó cada parada',
    none: 'No hubo paradas.',
    at: 'Hora',
    reason: 'Motivo',
    length: 'Duración',
    cost: 'Coste en producción',
    change: 'Costó menos',
    asked: (reason, length) =>
      `${reason}, ${length}: ¿cuánto de ese tiempo siguió trabajando la máquina (o la persona)?`,
    absorbed: 'Tiempo que siguió, m:ss',
    by: 'Código propio',
    save: 'Anotarlo',
    cancel: 'Cancelar',
    tooLong: 'Es más largo que la parada.',
    notATime: 'No es un tiempo: escribirlo como 1:30.',
    note: 'Una parada en la que la máquina siguió trabajando cuesta menos producción de lo que duró.',
  },
};
