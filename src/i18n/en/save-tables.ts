import { spoken } from '../spoken';
/** Words of what leaves the tablet from Review. */
export const saveTablesWords = spoken('saveTablesWords', {
  title: 'Out of the tablet',
  span: 'Which days',
  thisDay: (day: string) => day,
  allDays: (count: number) =>
    count === 1 ? 'The one day that was read' : `All ${count} days that were read`,
  spreadsheet: 'Spreadsheet with all tables',
  parts: 'Parts by day (CSV)',
  weeks: 'Weeks (CSV)',
  turns: 'Turns (CSV)',
  print: 'Print',
  note: 'For planning and improving the work. It is no record of hours worked and no payroll record, and it names nobody.',
  seconds:
    'Files hold every time in full. The screen cuts lost time and the ledger to whole seconds, so that they add up: a sum may be some seconds off.',
  saved: (name: string) => `Offered as a download: ${name}.`,
  failed: (problem: string) => `The table was not saved (${problem}).`,
  about: (first: string, last: string, made: string) => [
    'Days, weeks, turns, lost time, hours and notes of a shop floor, from taps at the station.',
    'For planning and improving the work. No payroll record, no record of hours worked, and no measure of a person.',
    `Days ${first} to ${last}, and the weeks that they lie in; made ${made}.`,
    'mean: net cycle of the counted parts, stoppages out. gross: with the stoppages between the taps.',
    'attended_min_per_good_part = mix_min_per_good_part ÷ (efficiency_pct ÷ 100).',
    'efficiency = earned ÷ attended; earned = targets of the good parts, and set-ups at their standard.',
    'turns: a turn without ended_at is still open; entered_later 1: written down afterwards, and not tapped.',
    'hours: planned and earned minutes; an hour in which nothing ended says nothing.',
    'first_pass_yield = good the first time ÷ done. lost_output: lost time less what machine or operator worked on.',
  ],
});
