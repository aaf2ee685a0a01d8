import { clockFace, decimalMinutes } from '../format-duration';
import { formatNumber } from '../format-number';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the operator's screen. */
export const pace = {
  // Before a turn.
  startTitle: 'Start a turn',
  who: 'Who is at the station?',
  whoHint: 'A code or initials. No full name is needed.',
  personCode: 'Code',
  addPerson: 'Add code',
  anotherPerson: 'Another code',
  whichPart: 'Which part?',
  partCode: 'Part code',
  partName: 'Name, if any',
  target: 'Target a part, if any',
  targetHint: 'Minutes and seconds as 1:48, or decimal minutes as 1.8',
  targetUnderstood: (ms: number) =>
    `Understood as ${roundedClockFace(ms)} a part (${decimalMinutes(ms)} min)`,
  targetFaults: {
    empty: '',
    'not-a-time': 'This is no time. Write 1:48 or 1.8.',
    'over-59': 'Seconds and minutes go up to 59 here.',
    'too-short': 'A target is a second at least.',
    'too-long': 'A target is a day at most.',
  },
  addPart: 'Add part',
  anotherPart: 'Another part',
  codeTaken: (code: string) => `A part in use has the code ${code} already.`,
  lastTurn: 'last turn',
  targetOf: (ms: number | null) => (ms === null ? 'no target' : `target ${roundedClockFace(ms)}`),
  start: 'Start',
  chooseBoth: 'Choose who and which part',
  choosePerson: 'Choose who is at the station',
  choosePart: 'Choose a part',
  startWith: (person: string, part: string, target: string) => `${person} · ${part} · ${target}`,
  demoLine: 'Only looking?',
  openDemo: 'Open the demo shop',

  // Cautions.
  cautionTitle: 'Before the first turn',
  cautionAgain: 'Safety and fairness',
  cautions: [
    'This timer is no safety device. Mount it outside guards and reach, and never tap with a hand in the danger zone.',
    'Stop the machine and lock it out before you clear a jam or change a tool. The time is not held against you.',
    'Ask about dust and vapour areas before a tablet goes into one.',
    'Local rules and licensed practice come before anything shown here.',
    'No target depends on going without rest, water or the toilet. Stop needs no reason.',
  ],

  // While a turn runs.
  turnHeading: (person: string, part: string) => `${person} · ${part}`,
  partDone: 'Part done',
  goOn: 'Go on',
  stop: 'Stop',
  stoppedState: 'Stopped',
  lastPart: (ms: number) => `Last part ${roundedClockFace(ms)}`,
  tapHint: 'Tap once for each part, always at the same moment',
  goOnHint: 'Work goes on from this tap',
  thisPart: 'This part',
  stopClock: 'Stopped for',
  partSoFar: (ms: number) => `This part so far ${clockFace(ms)}`,
  targetWord: 'Target',
  noTarget: 'No target',
  over: 'over',
  paceLabel: 'Pace, stoppages out',
  planLabel: 'Plan, stoppages in',
  position: {
    ahead: (ms: number) => `${roundedClockFace(ms)} ahead`,
    behind: (ms: number) => `${roundedClockFace(-ms)} behind`,
    level: 'level',
  },
  parts: (parts: number) => `${counted(Math.abs(parts))} ${parts < 0 ? 'behind' : 'ahead'}`,
  noPosition: 'No target, so no position',
  doneCount: (count: number) => (count === 1 ? 'part done' : 'parts done'),
  average: (n: number, done: number) => (n === done ? `average of ${n}` : `average, ${n} counted of ${done}`),
  averageNone: 'no average yet',
  averageTarget: (ms: number | null) => (ms === null ? 'no target' : `target ${roundedClockFace(ms)}`),
  undo: 'Undo',
  undoWhat: {
    'part-done': (ms: number) => `part done ${roundedClockFace(ms)}`,
    'part-changed': 'change of part',
    stopped: 'tap “Stop”',
    resumed: 'tap “Go on”',
  },
  takenBack: (what: string) => `Taken back: ${what}`,
  changePart: 'Change part',
  endTurn: 'End turn',
  lastPartIs: 'Last part',
  outcomes: { good: 'good', rework: 'rework', scrap: 'scrap' },
  outcomeTitle: (ms: number) => `Last part, ${roundedClockFace(ms)}: how is it?`,
  changeTitle: 'Which part comes next?',
  reasonTitle: 'Why, if you want to say',
  reasonTitleAfter: (ms: number) => `Stopped ${roundedClockFace(ms)}: why?`,
  gapTitle: (ms: number) => `Not work for ${roundedClockFace(ms)}: what was it?`,
  sayWhy: (ms: number) => `Stopped ${roundedClockFace(ms)} – say why`,
  saidWhy: (ms: number, why: string) => `Stopped ${roundedClockFace(ms)}: ${why}`,
  back: 'Back',
  screenMaySleep: 'Screen may sleep',
  announceDone: (count: number, ms: number) => `Part ${count} done, ${roundedClockFace(ms)}`,
  announceIgnored: 'Second tap ignored',
  announceStopped: 'Stopped',
  announceGoing: 'Going on',
} as const;

function counted(parts: number): string {
  const text = formatNumber(parts, 1);
  return `${text} ${text === '1.0' ? 'part' : 'parts'}`;
}
