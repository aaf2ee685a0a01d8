import { clockFace } from '../format-duration';
import { formatNumber } from '../format-number';
import { roundedClockFace } from '../rounded-clock-face';
import { spoken } from '../spoken';

/** Words of the operator's screen. */
export const pace = spoken('pace', {
  turnHeading: (person: string, part: string) => `${person} · ${part}`,
  partDone: (together: number) => (together === 1 ? 'Part done' : `${together} parts done`),
  beginPart: 'Start part',
  beginHint: 'Tap when your hands are on it',
  elementOf: (place: number, count: number) => `ends here · ${place} of ${count}`,
  goOn: 'Go on',
  stop: 'Stop',
  stoppedState: 'Stopped',
  reworkState: 'Rework',
  lastPart: (ms: number) => `Previous part ${roundedClockFace(ms)}`,
  secondTapNote: 'Right after the tap before: not counted so far',
  tapHint: 'Tap once for each part, always at the same moment',
  goOnHint: 'Work goes on from this tap',
  reworkDone: 'Rework done',
  reworkDoneHint: 'It is good, and work goes on',
  thisPart: 'This part',
  stopClock: 'Stopped for',
  reworking: 'Rework for',
  partSoFar: (ms: number) => `This part so far ${clockFace(ms)}`,
  targetWords: { none: 'Target', typed: 'Target', standard: 'Standard time', takt: 'Takt' },
  noTarget: 'No target',
  over: 'over',
  turnSoFar: 'Turn so far, without stoppages',
  planLabel: 'With stoppages',
  position: {
    ahead: (ms: number) => `${wholeSeconds(ms)} ahead`,
    behind: (ms: number) => `${wholeSeconds(-ms)} behind`,
    level: 'level',
  },
  parts: (parts: number) => `= ${counted(Math.abs(parts))} like this ${parts < 0 ? 'behind' : 'ahead'}`,
  learning: 'Learning: no position is kept',
  breakUntil: (time: string) => `Break until ${time}: the position stands still`,
  noPosition: 'No target, so no position',
  doneCount: (count: number) => (count === 1 ? 'part done' : 'parts done'),
  average: 'average of this part',
  averageOf: (n: number, done: number) => (n === done ? `(${n})` : `(${n} of ${done})`),
  averageNone: 'no average of this part yet',
  undo: 'Undo',
  undoWhat: {
    'part-begun': 'start of part',
    'element-done': 'end of element',
    'part-done': (ms: number) => `part done ${roundedClockFace(ms)}`,
    'part-changed': 'change of part',
    'person-changed': 'change of person',
    stopped: '“Stop”',
    resumed: '“Go on”',
    rework: { stopped: 'start of rework', resumed: 'end of rework' },
    answer: 'your answer',
  },
  takenBack: (what: string) => `Taken back: ${what}`,
  changePart: 'Change part',
  endTurn: 'End turn',
  orHandOver: 'or hand over',
  lastPartIs: 'Previous part',
  outcomes: { good: 'Good', rework: 'Rework', scrap: 'Scrap' },
  toRework: (count: number) => `${count} to rework`,
  changeTitle: 'Which part from now on?',
  back: 'Back',
  screenMaySleep: 'Screen may sleep',
  announceDone: (count: number, ms: number) => `Part ${count} done, ${roundedClockFace(ms)}`,
  announceGoing: 'Going on',
  announceReworked: (ms: number) => `Rework finished, ${clockFace(ms)}`,
  announceBegun: 'Part begun',
});

/** A position moves while it is read: whole seconds. */
function wholeSeconds(ms: number): string {
  return clockFace(Math.round(ms / 1_000) * 1_000);
}

function counted(parts: number): string {
  const text = formatNumber(parts, 1);
  return `${text} ${text === '1.0' ? 'part' : 'parts'}`;
}
