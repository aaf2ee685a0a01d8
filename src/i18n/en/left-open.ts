import { spoken } from '../spoken';
/** Words about a turn that was left open. */
export const leftOpen = spoken('leftOpen', {
  leftTitle: (person: string, day: string, time: string) =>
    `${person}’s turn is still open. It was last touched on ${day} at ${time}.`,
  leftText: 'Does it go on, or did it end there?',
  leftGoOn: 'It goes on',
  leftEnd: 'End it',
  leftNote: 'Ended now, the time since then is kept apart as not accounted for, and counts for no part.',
});
