import { clockFace } from '../format-duration';
import { spoken } from '../spoken';

/** Words of the supervisor's PIN. */
export const latchWords = spoken('latchWords', {
  title: 'Supervisor’s PIN',
  what: 'It keeps a passing hand from changing parts, targets, methods, allowances and reasons, and from restoring a copy on this tablet. It is no safe: it hides nothing and locks no data, and whoever has the tablet for an hour, or a copy of the records, can get past it.',
  off: 'No PIN is set.',
  on: 'A PIN is set. Timing needs none, nor does a new code, nor a new part without a target on Pace; changing standards does.',
  open: 'Open for changes until Pace is opened.',
  shut: 'Locked: changing this needs the supervisor’s PIN.',
  pin: 'PIN',
  give: 'Unlock',
  close: 'Lock again',
  newPin: 'New PIN, 4 to 12 digits',
  again: 'The same again',
  current: 'The PIN that is set',
  set: 'Set the PIN',
  change: 'Change or remove the PIN',
  changeTo: 'Change the PIN',
  remove: 'Remove the PIN',
  cancel: 'Cancel',
  wasSet: 'The PIN is set.',
  wasRemoved: 'The PIN is removed.',
  shape: 'A PIN is four to twelve digits.',
  differs: 'The two PINs differ.',
  checking: 'Checking …',
  wrong: 'That is not the PIN.',
  wait: (ms: number) => `Too many wrong ones. The next is taken in ${clockFace(ms)}.`,
  noCryptography: 'This browser has no cryptography here; open the app at an https address.',
  forgotten:
    'There is no way back to a forgotten PIN: nothing here tells it, resets it or takes it off. What it locks stays locked, on every tablet that takes a copy; timing, Review and copies go on. So write it down and keep it where the supervisor’s keys are.',
});
