import { formatNumber } from '../format-number';
import { spoken } from '../spoken';

const counted = (count: number, one: string, more: string) =>
  `${formatNumber(count)} ${count === 1 ? one : more}`;
const records = (count: number) => counted(count, 'record', 'records');

/** Words about copies outside the tablet, restoring them, snapshots, and the check of all records. */
export const copiesWords = spoken('copiesWords', {
  records,
  inDemo: 'The demo shop is invented: it needs no copy, and no copy of yours is read into it.',
  keep: {
    title: 'Keep a copy outside',
    text: 'A lost or broken tablet takes its records with it. Only a copy kept elsewhere survives that.',
    age: (age: string) => `Last copy: ${age}.`,
    none: 'No copy has been made yet.',
    since: (count: number) =>
      count === 0
        ? 'Nothing was recorded since.'
        : `${records(count)} since ${count === 1 ? 'is' : 'are'} not in it.`,
    notYet: (count: number) => `${records(count)} ${count === 1 ? 'is' : 'are'} on this tablet only.`,
    how: {
      folder: 'It was written to the folder and read back.',
      shared: 'It was handed to the share sheet.',
      downloaded: 'It was offered as a download; whether it was kept, the browser does not say.',
    },
    make: 'Make a copy',
    making: 'Writing the copy and reading it back …',
    lock: 'Lock it with a pass-phrase',
    lockNote:
      'Without one, anybody who gets the file can read it. With one, only the pass-phrase opens it: write it down, because nobody can recover it.',
    phrase: 'Pass-phrase',
    again: 'The same again',
    phraseShort: 'A pass-phrase needs at least eight characters. Three or four words are better.',
    phraseDiffers: 'The two pass-phrases differ.',
    noCryptography: 'This browser cannot lock a file here; open the app at an https address.',
    ready: (name: string, count: number, size: string) =>
      `${name}: ${records(count)}, ${size}, read back and sound.`,
    unsaved: (count: number) => ` ${records(count)} not saved yet ${count === 1 ? 'is' : 'are'} not in it.`,
    withBreaks: (count: number) =>
      ` The log has ${counted(count, 'break', 'breaks')}; everything readable is in the copy.`,
    share: 'Share …',
    download: 'Download',
    cancel: 'Cancel',
    close: 'Close',
    outcome: {
      shared: (name: string) => `Given to the share sheet: ${name}. Look whether it arrived.`,
      refused: (name: string) => `The system would not take ${name}. Download it instead.`,
      cancelled: (name: string) => `${name} was not shared.`,
    },
    downloaded: (name: string) =>
      `Offered as a download: ${name}. Look whether it is there, then take it off this tablet.`,
    notVerified: (sentence: string) => `No copy was made: what was written does not read back. ${sentence}`,
    notWritten: (problem: string) => `No copy was made (${problem}). The records are as they were.`,
  },
  folder: {
    title: 'A folder for copies',
    text: 'A shared drive or a memory card. A copy is written there by itself after every finished turn or study, one file a day. These copies are not locked.',
    choose: 'Choose a folder …',
    other: 'Choose another …',
    chosen: (name: string) => `Copies go to the folder “${name}”.`,
    asks: (name: string) => `The browser wants to be asked again before it writes to “${name}”.`,
    ask: 'Allow it',
    now: 'Copy there now',
    forget: 'Use no folder',
    forgotten: 'No folder is used any more. What lies in it stays.',
    done: (name: string, count: number) => `${name}: ${records(count)}, read back and sound.`,
    collapsed: (count: number, before: number) =>
      `Nothing was written: the log holds ${records(count)}, and today’s copy there ${formatNumber(before)}. That copy was left as it is.`,
    noFolder: 'No folder is chosen.',
    failed: (problem: string) => `The folder could not be used (${problem}).`,
  },
  missing: {
    text: (count: number) =>
      `${counted(count, 'record that was', 'records that were')} on this tablet ${count === 1 ? 'is' : 'are'} gone. Take a copy in: the fullest one inside this tablet is open below, where there is one. One from outside may be fuller.`,
    leave: 'Leave it so',
  },
  restore: {
    title: 'Restore a copy',
    text: 'Adds what this tablet lacks and changes nothing that is there. Copies of other tablets may be added too.',
    choose: 'Choose a copy …',
    reading: 'Reading the copy and comparing …',
    refused: (sentence: string) => `${sentence} Nothing was changed.`,
    unreadable: (problem: string) =>
      `The records on this tablet could not be read to compare (${problem}). Nothing was changed.`,
    locked: 'This copy is locked. Type its pass-phrase.',
    open: 'Open it',
    rows: {
      made: 'Made',
      holds: 'Holds',
      added: 'New here',
      there: 'Here already',
      clashes: 'Clashes',
      breaks: 'Breaks in it',
    },
    made: (day: string, device: string, release: string) => `${day} on ${device}, release ${release}`,
    tablets: (names: string) => `of ${names}`,
    clash: (device: string, sequence: number) => `record ${sequence} of ${device}`,
    clashText: (count: number, places: string) =>
      `${counted(count, 'record', 'records')} with another content under the same number, the first: ${places}. Nothing can be taken: which of them is right, no program can say.`,
    none: 'none',
    breaks: (count: number) => `${counted(count, 'break', 'breaks')} the log had when the copy was made`,
    ahead: (day: string, time: string) =>
      `The other tablet’s clock is ahead: its records reach to ${day}, ${time}. What was set there, a target or the PIN, holds against what is set here until then. First put the wrong clock right.`,
    take: 'Take it in',
    leave: 'Leave it',
    sharedCodes: (codes: string) =>
      `Two parts are called ${codes}. Rename or retire one under Shop, or both are on offer.`,
    nothingNew: 'Everything in this copy is here already.',
    busy: 'Something is being timed. End the turn or the study first; nothing was changed.',
    taking: 'Taking the records in …',
    done: (count: number) => `${records(count)} taken in. Everything that was here is as it was.`,
    cutShort: (written: number, of: number, problem: string) =>
      `The storage refused after ${formatNumber(written)} of ${records(of)} (${problem}). Those are sound; restore again for the rest.`,
  },
  overlaps: {
    title: 'Two tablets, one person, the same time',
    text: 'One of the two turns may be somebody else’s: put the person right in Review of that day.',
    line: (person: string, minutes: string, first: string, second: string) =>
      `${person}: ${minutes} min in both, on ${first} and on ${second}`,
    review: 'Open Review',
    unknown: 'Whether turns of two tablets overlap could not be read.',
  },
  snapshots: {
    title: 'Daily copy inside this tablet',
    text: 'Taken when nothing is timed; the last eight are kept. It helps against a damaged log, not after clearing the browser’s data.',
    none: 'None yet.',
    impossible: 'This browser cannot keep one. Copies outside matter all the more.',
    line: (count: number) => records(count),
    look: 'Look into it',
    lookAt: (day: string) => `Look into it: the copy of ${day}`,
    collapsed: (now: number, before: number, day: string) =>
      `The log holds ${records(now)}; the copy of ${day} holds ${formatNumber(before)}. Records were lost: look into that copy and take it in. No older copy is given up until then.`,
    failed: (problem: string) => `Today’s could not be taken (${problem}).`,
  },
  check: {
    title: 'Check all records',
    text: 'Follows the chain of checksums from the first record to the last. It finds damage, not deceit.',
    go: 'Check all records',
    going: (done: number) => `${records(done)} followed …`,
    sound: (count: number, tablets: number) =>
      `${records(count)} of ${counted(tablets, 'tablet', 'tablets')}: no break from the first to the last.`,
    broken: (count: number, breaks: number) =>
      `${records(count)} followed; ${counted(breaks, 'break', 'breaks')}. Everything readable can still be copied and exported.`,
    missing: (device: string, sequence: number) => `Record ${sequence} of ${device} is missing.`,
    changed: (device: string, sequence: number) => `Record ${sequence} of ${device} is not what was written.`,
    unreadable: (device: string, sequence: number) => `Record ${sequence} of ${device} can go into no copy.`,
    more: (count: number) => `and ${formatNumber(count)} more`,
    recent: 'Among the newest records:',
    failed: (problem: string) => `The check could not be finished (${problem}). Nothing has been deleted.`,
  },
});
