import { spoken } from '../spoken';

/** Words of the first minutes: putting the app on the tablet, and a way through the demo shop. */
export const firstSteps = spoken('firstSteps', {
  install: {
    title: 'Install it on this tablet',
    why: 'It then opens like an app, without a network too, and the browser keeps its records more safely than those of a tab.',
    menu: 'In the browser’s menu: “Install app” or “Add to home screen”. Where there is neither, it works in the tab.',
    go: 'Install',
  },
  guide: {
    title: 'Three people, three questions',
    open: 'The three questions',
    away: 'Put away',
    here: 'Look here:',
    who: { pace: 'Operator', study: 'Engineer', cell: 'Engineer', review: 'Foreman' },
    look: {
      pace: 'choose K7 and M, tap Start, then the large surface once for each part. It says how far ahead or behind.',
      study:
        'open a study. Its sheet ends in the standard time; touch any figure to see how it was worked out.',
      cell: 'choose M: the hands govern, so under “What if” a quicker machine gains nothing. Then choose V.',
      review:
        'Friday 27 March gave 283 parts, Tuesday 24 March 231, of a harder mix. Efficiency was much the same.',
    },
  },
});
