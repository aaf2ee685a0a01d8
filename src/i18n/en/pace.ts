import { clockFace, decimalMinutes } from '../format-duration';
import { formatNumber } from '../format-number';

const counted = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

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
  targetUnderstood: (ms: number) => `Understood as ${clockFace(ms)} a part (${decimalMinutes(ms)} min)`,
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
  targetOf: (ms: number | null) => (ms === null ? 'no target' : `target ${clockFace(ms)}`),
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
  lastPart: (ms: number) => `Last part ${clockFace(ms)}`,
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
    ahead: (ms: number) => `${clockFace(ms)} ahead`,
    behind: (ms: number) => `${clockFace(-ms)} behind`,
    level: 'level',
  },
  parts: (parts: number) => `${counted1(Math.abs(parts))} ${parts < 0 ? 'behind' : 'ahead'}`,
  noPosition: 'No target, so no position',
  doneCount: (count: number) => (count === 1 ? 'part done' : 'parts done'),
  average: (n: number, done: number) => (n === done ? `average of ${n}` : `average, ${n} counted of ${done}`),
  averageNone: 'no average yet',
  averageTarget: (ms: number | null) => (ms === null ? 'no target' : `target ${clockFace(ms)}`),
  undo: 'Undo',
  undoWhat: {
    'part-done': (ms: number) => `part done ${clockFace(ms)}`,
    'part-changed': 'change of part',
    stopped: 'tap “Stop”',
    resumed: 'tap “Go on”',
  },
  takenBack: (what: string) => `Taken back: ${what}`,
  changePart: 'Change part',
  endTurn: 'End turn',
  lastPartIs: 'Last part',
  outcomes: { good: 'good', rework: 'rework', scrap: 'scrap' },
  outcomeTitle: (ms: number) => `Last part, ${clockFace(ms)}: how is it?`,
  changeTitle: 'Which part comes next?',
  reasonTitle: 'Why, if you want to say',
  reasonTitleAfter: (ms: number) => `Stopped ${clockFace(ms)}: why?`,
  gapTitle: (ms: number) => `Not work for ${clockFace(ms)}: what was it?`,
  sayWhy: (ms: number) => `Stopped ${clockFace(ms)} – say why`,
  saidWhy: (ms: number, why: string) => `Stopped ${clockFace(ms)}: ${why}`,
  back: 'Back',
  endTitle: 'End this turn?',
  endText: (count: number, ms: number) =>
    `${counted(count, 'part', 'parts')} done. The part in hand, ${clockFace(ms)} so far, will not be counted.`,
  endYes: 'End the turn',
  endNo: 'Keep working',
  screenMaySleep: 'Screen may sleep',
  announceDone: (count: number, ms: number) => `Part ${count} done, ${clockFace(ms)}`,
  announceIgnored: 'Second tap ignored',
  announceStopped: 'Stopped',
  announceGoing: 'Going on',

  // A turn that was left open.
  leftTitle: (person: string, day: string, time: string) =>
    `${person}’s turn is still open. It was last touched on ${day} at ${time}.`,
  leftText: 'Does it go on, or did it end there?',
  leftGoOn: 'It goes on',
  leftEnd: 'End it',
  leftNote: 'Ended now, the time since then is kept apart as not accounted for, and counts for no part.',
} as const;

function counted1(parts: number): string {
  const text = formatNumber(parts, 1);
  return `${text} ${text === '1.0' ? 'part' : 'parts'}`;
}
