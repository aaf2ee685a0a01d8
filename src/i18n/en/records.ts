import { spoken } from '../spoken';

const records = (count: number) => `${count} ${count === 1 ? 'record' : 'records'}`;

/** Words of the Records screen. */
export const recordsWords = spoken('recordsWords', {
  reading: 'Counting the records …',
  trouble: (problem: string) => `The records could not be counted (${problem}). Nothing has been deleted.`,
  kept: {
    title: 'What this tablet holds',
    /** Stands after the figure itself. */
    saved: (count: number) => `${count === 1 ? 'record' : 'records'} saved`,
    rows: {
      holds: 'Holds',
      days: 'From, to',
      tablet: 'This tablet’s name',
      copies: 'Copies on this tablet',
      lasting: 'Promise of the browser',
      room: 'Room left',
      unsaved: 'Not saved',
    },
    holds: (turns: number, studies: number) =>
      `${turns} ${turns === 1 ? 'turn' : 'turns'}, ${studies} ${studies === 1 ? 'study' : 'studies'}`,
    days: (first: string, last: string) => (first === last ? first : `${first} to ${last}`),
    noDays: 'no turn and no study yet',
    copies: {
      2: 'two: a database and a journal beside it',
      1: 'one: a database',
      0: 'none: everything is lost when the page closes',
    },
    lasting: {
      asking: 'asking …',
      yes: 'given: it keeps the records until somebody deletes them',
      no: 'not given: it may delete the records when the tablet runs short of room',
      forgetful:
        'not given: in a browser tab it deletes them after seven days without use. Put the app on the home screen (Share, then Add to Home Screen), and bring the records along as a copy',
      unknown: 'this browser does not say',
    },
    ask: 'Ask the browser again',
    noRoom: 'the browser does not say',
    littleRoom: (size: string) => `${size}, which is little: make a copy, then make room on the tablet`,
    askedInVain:
      'The browser said no again. It often says yes once the app is installed on the home screen, or has been used for a while.',
    unsaved: (count: number) => `${records(count)}, in memory only`,
  },
  take: {
    title: 'Take a readings table in',
    text: 'One row a reading, as CSV, with at least the columns study, cycle, element, and observed_s or watch_s. All of it is taken, or nothing.',
    choose: 'Choose a table …',
    reading: 'Reading the table …',
    refused: (name: string, count: number) =>
      `Nothing was taken from ${name}: ${count === 1 ? 'one thing stands against it' : `${count} things stand against it`}.`,
    more: (count: number) => `and ${count} more`,
    tooLarge: (name: string, megabytes: number) =>
      `Nothing was taken: ${name} is larger than ${megabytes} MB, and no readings table is.`,
    unreadable: (name: string, problem: string) =>
      `Nothing was taken: ${name} could not be read (${problem}).`,
  },
  give: {
    title: 'Take tables out',
    profile: 'Numbers in tables',
    profiles: {
      point: { name: '1.25', note: 'decimal point, commas between cells' },
      comma: { name: '1,25', note: 'decimal comma, semicolons between cells' },
    },
    study: 'Readings of a study',
    studyText: 'Every reading, enough to work the study out again anywhere.',
    noStudy: 'No study yet.',
    saveStudy: 'Save the readings table',
    days: 'Days',
    daysText: 'One row a day and part: n, mean, spread, target.',
    saveDays: 'Save the day table',
    saved: (name: string) => `Offered as a download: ${name}.`,
    guarded: (count: number) =>
      ` ${count === 1 ? 'One text begins' : `${count} texts begin`} like a formula and stand${count === 1 ? 's' : ''} there with an apostrophe in front, so that no spreadsheet runs ${count === 1 ? 'it' : 'them'}.`,
    noDays: 'There is no day to save yet.',
    noReadings: 'This study has no reading to save.',
    failed: (problem: string) => `No table was made (${problem}).`,
  },
  demo: {
    title: 'The demo shop',
    text: 'An invented shop of four weeks to try everything on. Its records lie apart from yours and never mix with them.',
    open: 'Open the demo shop',
    leave: 'Leave the demo shop',
  },
  purpose: {
    title: 'What these records are for',
    text: 'For improving and planning the work; not for pay or discipline. This is no record of hours worked and no payroll. Nothing leaves the tablet unless somebody takes it out here.',
  },
});
