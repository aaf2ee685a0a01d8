import { spoken } from '../spoken';
/** Words of standard data: an element's time for parts of any size. */
export const studyData = spoken('studyData', {
  title: 'Standard data',
  none: 'No element was read on parts of several sizes yet. Say in the method what an element grows with, give the size of each part, and study parts of four sizes or more.',
  element: 'Element and what it grows with',
  pair: (element: string, driver: string) => `${element}, by ${driver}`,
  formula: (a: string, b: string, unit: string, driver: string) => `NT = ${a} ${b} · ${driver}, in ${unit}`,
  constant: 'Constant a',
  slope: 'For each unit of size, b',
  spread: 'Spread about the line, s',
  fit: 'R²',
  range: 'Sizes studied',
  rangeIs: (low: string, high: string, sizes: number, n: number) =>
    `${low} to ${high}: ${sizes} sizes, ${n} readings`,
  lack: 'Lack of fit F',
  lackIs: (f: string, p: string) => `${f}, probability ${p}`,
  tiny: 'under 0.01',
  plusMinus: (value: string, half: string) => `${value} ± ${half}`,
  warnings: {
    'few-sizes': 'Fewer than four sizes: two points make any line.',
    'few-readings': 'A size has fewer than four readings.',
    bends: 'The readings bend away from a straight line: another driver, or two ranges.',
    'negative-constant': 'The constant lies below nothing: below the sizes studied the line is wrong.',
    'one-size-decides': 'One size holds the line alone: study sizes between.',
    constant: 'No growth is shown, and none that matters: the element is the same for every size.',
  },
  ask: (element: string) => `${element} alone, for a size`,
  whole: 'The whole part',
  wholeMissing: (elements: string) => `Not known: nothing was read that tells it of ${elements}.`,
  wholeNote: 'NT a part: by the size each shows to grow with, else its mean.',
  parts: 'Parts quoted for',
  mean: (time: string, half: string) => `${time}, ± ${half} as a mean`,
  each: (parts: number, half: string) =>
    parts === 1 ? `one part alone ± ${half}` : `the average of ${parts} parts ± ${half}`,
  outside: (side: 'below' | 'above') =>
    `This size lies far ${side} those studied. The line says nothing there: study a part of this size.`,
  justOutside: 'This size lies just outside those studied.',
  sizeFault: 'Give a size above 0 and a whole number of parts.',
  picture: (element: string) => `Readings of ${element} against size, with the fitted line`,
  source:
    'Least squares; intervals at 95 %: Montgomery, Peck and Vining, Introduction to Linear Regression Analysis, chapter 2. Lack of fit: Draper and Smith, Applied Regression Analysis, section 2.1.',
  hold: 'It holds for these conditions and this method only.',
});
