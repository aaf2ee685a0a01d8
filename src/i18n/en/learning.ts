import { spoken } from '../spoken';

const parts = (count: number) => (count === 1 ? '1 part' : `${count} parts`);

/** Words about people who are new to a job. */
export const learning = spoken('learning', {
  title: 'Learning',
  note: 'While somebody learns, their parts count as done, are in no average, and show no position.',
  line: (code: string, count: number) => `${code}: the first ${parts(count)}`,
  end: 'End it',
  endOf: (code: string) => `End learning of ${code}`,
  who: 'Who learns?',
  howMany: 'For how many parts?',
  set: 'Mark as learning',
  choose: 'Choose who, and for how many parts. Nothing was changed.',
});
