import { decimalMinutes } from '../decimal-time';
import { roundedClockFace } from '../rounded-clock-face';
import { spoken } from '../spoken';

/** Words of the screen before a turn: who, which part, and what anyone should know first. */
export const turnSetup = spoken('turnSetup', {
  startTitle: 'Start a turn',
  who: 'Who is at the station?',
  whoHint: 'A code or initials. No full name is needed.',
  personCode: 'Code',
  addPerson: 'Add code',
  anotherPerson: 'Another code',
  whichPart: 'Which part?',
  partCode: 'Part code',
  partName: 'Name, if any',
  target: 'Target time for one part (may stay empty)',
  targetHint: 'Minutes and seconds as 1:48, or decimal minutes as 1.8',
  targetEquals: (ms: number) => `= ${roundedClockFace(ms)}`,
  targetMinutes: (ms: number) => `for one part, ${decimalMinutes(ms)} min`,
  targetFaults: {
    empty: '',
    'not-a-time': 'This is no time. Write 1:48, 0:06 or 1.8.',
    'over-59': 'Seconds and minutes go up to 59 here.',
    'too-short': 'A target is a second at least.',
    'too-long': 'A target is a day at most.',
  },
  addPart: 'Add part',
  anotherPart: 'Another part',
  cancel: 'Cancel',
  codeTaken: (code: string, target: string) => `${code} is there already, ${target}: change it in Shop.`,
  codeIsFull: (most: number) => `A code has ${most} characters at most: no more fit in.`,
  needsCode: 'A part needs a code.',
  targetInShop: 'A target is set in Shop, with the supervisor’s PIN. The part can be made without.',
  lastTurn: 'last turn',
  madeLast: 'made last',
  lookBack: (person: string, from: string, to: string) => `See the last record: ${person}, ${from} to ${to}`,
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
    'Local rules, agreements and licensed practice come before anything shown here.',
    'No target depends on going without rest, water or the toilet. Stop needs no reason. Working faster strains the body.',
    'Ask about dust and vapour areas before a tablet goes into one.',
    'Inspecting, cleaning and safety checks are part of the work: a target that leaves no time for them is wrong.',
    'Whoever is learning, pregnant, on restricted duty or back from an injury is held only to a target agreed for them.',
  ],
});
