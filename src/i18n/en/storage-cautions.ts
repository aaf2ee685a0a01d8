import { spoken } from '../spoken';
/** What to know about this tablet before hours of work are trusted to it. */
export const cautionWords = spoken('cautionWords', {
  little: (size: string) =>
    `Only ${size} are left for records on this tablet. Take a copy out under Records and make room first.`,
  forgetful:
    'This is a browser tab, and this browser deletes what a site keeps in a tab once it was not used for seven days. Put Pacewright on the home screen first: Share, then Add to Home Screen. What is recorded here already comes along as a copy: make one under Records, and restore it there.',
});
