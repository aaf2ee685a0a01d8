import { spoken } from '../spoken';
import { cell } from './cell';
/** Words of the page on people and machines. */
export const cellPeople = spoken('cellPeople', {
  enough: (people: string, good: string, wanted: string) =>
    `Enough with ${people}: ${good} good parts a day, ${wanted} are wanted.`,
  tooFew: (people: string, good: string, wanted: string) =>
    `Too few with ${people}: ${good} good parts a day, ${wanted} are wanted.`,
  wouldDo: (people: string) => `${people} would do, with the work shared out as below.`,
  close: 'It is near: fewer stoppages, or a little less of any element, would do.',
  nothingLeft: 'Stoppages and occasional work take all of the takt: no number of people would do.',
  tooLong: (left: string, elements: readonly string[]) =>
    `No number of people would do: ${cell.list(elements)} ${elements.length === 1 ? 'alone takes' : 'each take'} longer than the ${left} left of the takt.`,
  machineSlow: (minutes: string, left: string) =>
    `One machine is too slow, whoever serves it: loading and machine take ${minutes}, and ${left} of the takt is left.`,
  itTakes: (machines: string, people: string) => `${machines} and ${people} would do.`,
  tieSlow: (minutes: string, left: string) =>
    `One person’s work fits, but hands and machine wait for each other in turn: ${minutes}, and ${left} of the takt is left.`,
  demand: 'Parts wanted a day',
  left: (takt: string, left: string) =>
    `Takt ${takt}: the working day over the parts wanted. ${left} of it is left for this work, after stoppages, occasional work, rework and scrap.`,
  people: (count: number) => `${count} ${count === 1 ? 'person' : 'people'}`,
  noTakt: 'How many people does it take? Say how many parts are wanted a day.',
  noHands: 'There is no hand work on this part to share out.',
  loop: (elements: string) =>
    `${elements} wait for each other in a circle, so nobody could begin. Change what comes after what.`,
  takt: (minutes: string) => `left of the takt: ${minutes}`,
  person: (number: number) => `person ${number}`,
  machine: 'machine, loading in',
  chart: 'Work of each person beside what is left of the takt, minutes a part',
  barSays: (who: string, minutes: string) => `${who}: ${minutes}.`,
  p80: '8 of 10',
  figures: {
    minimum: 'fewest people by arithmetic',
    efficiencyTakt: 'balance efficiency by the takt left',
    delayTakt: 'balance delay by the takt left',
    efficiencyLongest: 'balance efficiency by longest station',
    delayLongest: 'balance delay by longest station',
  },
  order: 'What must come after what',
  after: 'after',
  first: 'nothing',
  oneMachine: (part: string, adds: string) =>
    `${part}: one machine for one operator; a second adds only ${adds} good parts an hour.`,
  oneMachineOnly: (part: string) =>
    `${part}: one machine for one operator; a second adds nothing that shows.`,
  moreMachines: (part: string, count: number, adds: string, waits: string) =>
    `${part}: of ${count} machines for one operator the last adds ${adds} good parts an hour, and each waits ${waits} of the time. Whether that pays, only cost tells.`,
  ideal: (ideal: string) => `By times alone one operator can serve ${ideal} machines like this one.`,
  cheapest: (machines: string) => `A good part is cheapest with ${machines}.`,
  machinesCount: (count: number) => `${count} ${count === 1 ? 'machine' : 'machines'}`,
  machines: {
    machines: 'machines',
    perHour: 'good parts an hour',
    operator: 'operator waits',
    machine: 'each machine waits for the operator',
    random: 'lost if machines call at any moment',
    cost: 'cost a good part',
  },
  machinesNote:
    'Good parts are simulated, with stoppages and with waiting for each other. Waiting and loss are by times alone, loading not counted as waiting; the loss at any moment is not in the good parts: here machines are served in turn.',
  operatorRate: 'Operator, cost an hour',
  machineRate: 'One machine, cost an hour',
  how: [
    'Takt = working time of a day ÷ parts wanted in it. Left of it: working time without stoppages × share not scrapped ÷ parts wanted, less occasional work and rework a part.',
    'Good parts a day are those of the simulation on the other pages.',
    'Work is given out element by element as long as it fits what is left of the takt: the element that most others wait for first, and by the heaviest work behind it; the better of the two is shown. Neither finds the best always (Jacobs & Chase; Helgeson and Birnie 1961).',
    'Balance efficiency = all hand work ÷ (people × takt left), or ÷ (people × longest station). Delay = the rest. Both are in use.',
    'The tick “8 of 10”: in eight timed cycles of ten that person was done by then.',
    'Machines in turn: the round takes the longer of loading + machine and machines × the operator’s own time; n′ = (loading + machine) ÷ (loading + work beside it) (Niebel & Freivalds).',
    'Calling at random: binomial, each machine needing the operator loading ÷ (loading + machine) of the time.',
  ],
});
