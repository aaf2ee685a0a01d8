import type { cellPeople as english } from '../en/cell-people';
import { cell } from './cell';

/** Words of the page on people and machines. */
export const cellPeople: typeof english = {
  enough: (people, good, wanted) => `Basta con ${people}: ${good} piezas buenas al día, se piden ${wanted}.`,
  tooFew: (people, good, wanted) =>
    `No basta con ${people}: ${good} piezas buenas al día, se piden ${wanted}.`,
  wouldDo: (people) => `Bastaría con ${people}, con el trabajo repartido como abajo.`,
  close:
    'Falta poco: bastaría con menos de lo que detiene la célula, o con un poco menos de cualquier elemento.',
  nothingLeft:
    'Las paradas y el trabajo ocasional ocupan todo el takt: no bastaría ningún número de personas.',
  tooLong: (left, elements) =>
    `No bastaría ningún número de personas. Ya por sí solo ${elements.length === 1 ? 'dura' : 'dura cada uno'} más que los ${left} que quedan del takt: ${cell.list(elements)}.`,
  machineSlow: (minutes, left) =>
    `Una máquina es demasiado lenta, la atienda quien la atienda: carga y máquina tardan ${minutes}, y del takt quedan ${left}.`,
  itTakes: (machines, people) => `Bastaría con ${machines} y ${people}.`,
  tieSlow: (minutes, left) =>
    `El trabajo de una persona cabe, pero trabajo manual y máquina se esperan alternadamente: ${minutes}, y del takt quedan ${left}.`,
  demand: 'Piezas pedidas al día',
  left: (takt, left) =>
    `Takt ${takt}: la jornada de trabajo entre las piezas pedidas. De él quedan ${left} para este trabajo, tras paradas, trabajo ocasional, retrabajo y desecho.`,
  people: (count) => `${count} ${count === 1 ? 'persona' : 'personas'}`,
  noTakt: '¿Cuántas personas hacen falta? Indicar cuántas piezas se piden al día.',
  noHands: 'En esta pieza no hay trabajo manual que repartir.',
  loop: (elements) =>
    `${elements} se esperan en círculo, así que nadie podría empezar. Cambiar qué va después de qué.`,
  takt: (minutes) => `queda del takt: ${minutes}`,
  person: (number) => `persona ${number}`,
  machine: 'máquina, con la carga',
  chart: 'Trabajo de cada persona junto a lo que queda del takt, minutos por pieza',
  barSays: (who, minutes) => `${who}: ${minutes}.`,
  p80: '8 de 10',
  figures: {
    minimum: 'mínimo de personas por cálculo',
    efficiencyTakt: 'eficiencia del equilibrado, por el takt restante',
    delayTakt: 'pérdida de equilibrado, por el takt restante',
    efficiencyLongest: 'eficiencia del equilibrado, por el puesto más largo',
    delayLongest: 'pérdida de equilibrado, por el puesto más largo',
  },
  order: 'Qué tiene que ir después de qué',
  after: 'después de',
  first: 'nada',
  oneMachine: (part, adds) =>
    `${part}: una máquina por persona; una segunda añade solo ${adds} piezas buenas por hora.`,
  oneMachineOnly: (part) => `${part}: una máquina por persona; una segunda no añade nada demostrado.`,
  moreMachines: (part, count, adds, waits) =>
    `${part}: de ${count} máquinas por persona, la última añade ${adds} piezas buenas por hora y cada una espera el ${waits} del tiempo. Si compensa, solo lo dicen los costes.`,
  ideal: (ideal) => `Solo por los tiempos, una persona puede atender ${ideal} máquinas como esta.`,
  cheapest: (machines) => `Una pieza buena sale más barata con ${machines}.`,
  machinesCount: (count) => `${count} ${count === 1 ? 'máquina' : 'máquinas'}`,
  machines: {
    machines: 'máquinas',
    perHour: 'piezas buenas por hora',
    operator: 'la persona espera',
    machine: 'cada máquina espera a la persona',
    random: 'pérdida si las máquinas llaman en cualquier momento',
    cost: 'coste por pieza buena',
  },
  machinesNote:
    'Las piezas buenas son simuladas, con paradas y con la espera mutua. La espera y la pérdida son solo por los tiempos, y la carga no cuenta como espera; la pérdida por llamadas en cualquier momento no está en las piezas buenas: aquí las máquinas se atienden una tras otra.',
  operatorRate: 'Persona, coste por hora',
  machineRate: 'Máquina, coste por hora',
  how: [
    'Takt = tiempo de trabajo de un día ÷ piezas pedidas en él. Takt restante, lo que queda de él: tiempo de trabajo sin paradas × proporción sin desecho ÷ piezas pedidas, menos el trabajo ocasional y el retrabajo por pieza.',
    'Las piezas buenas al día son las de la simulación de las otras páginas.',
    'El trabajo se reparte elemento por elemento mientras quepa en el takt restante: primero el elemento al que esperan más de los otros y, otra vez, por el mayor trabajo que tiene detrás; se muestra el mejor de los dos repartos. Ninguno encuentra siempre el óptimo (Jacobs & Chase; Helgeson y Birnie 1961).',
    'Eficiencia del equilibrado = todo el trabajo manual ÷ (personas × takt restante), o ÷ (personas × puesto más largo). Pérdida = el resto. Las dos se usan, y difieren.',
    'La marca «8 de 10»: en ocho de cada diez ciclos cronometrados, esa persona ya había terminado.',
    'Máquinas una tras otra: la ronda tarda lo más largo entre carga + máquina y máquinas × tiempo propio de la persona; n′ = (carga + máquina) ÷ (carga + trabajo a su lado) (Niebel & Freivalds).',
    'Llamadas al azar: binomial; cada máquina necesita a la persona carga ÷ (carga + máquina) del tiempo.',
  ],
};
