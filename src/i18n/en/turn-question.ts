import { clockFace } from '../format-duration';
import { roundedClockFace } from '../rounded-clock-face';

/** Words of the questions that take the place of the figures. */
export const turnQuestion = {
  outcomeTitle: (ms: number) => `Previous part, ${roundedClockFace(ms)}: how is it?`,
  reasonTitle: 'Why, if you want to say',
  reasonTitleAfter: (ms: number) => `Stopped ${clockFace(ms)}: why?`,
  gapTitle: (ms: number) => `Not work for ${roundedClockFace(ms)}: what was it?`,
} as const;
