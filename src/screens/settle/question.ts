import type { Bench } from '../../application/bench';
import { answerBreak } from '../../application/turn/answer-break';
import { answerGap } from '../../application/turn/answer-gap';
import { confirmPart } from '../../application/turn/confirm-part';
import { confirmPerson } from '../../application/turn/confirm-person';
import { countTap } from '../../application/turn/count-tap';
import { explainChange } from '../../application/turn/explain-change';
import { judgeCycle } from '../../application/turn/judge-cycle';
import { leaveTapOut } from '../../application/turn/leave-tap-out';
import { recodeParts } from '../../application/turn/recode-parts';
import type { Doubt } from '../../domain/turn/doubt';
import type { Turn } from '../../domain/turn/turn';
import { settle as words } from '../../i18n/en/settle';
import { roundedClockFace } from '../../i18n/rounded-clock-face';

/** Who answers, and why where a part or a person changes. At the station it is the operator, and needs no code. */
export interface Who {
  readonly by: string;
  readonly why: string;
  readonly isAtStation: boolean;
}

export function operatorOf({ person }: Turn): Who {
  return { by: person, why: words.saidAtStation, isAtStation: true };
}

/** One answer to an open question. */
export type Choice =
  | { readonly word: string; readonly needsWhy?: true; say(who: Who): void }
  /** Not an answer yet: which reason, or which person, comes next. */
  | { readonly word: string; readonly needsWhy?: true; readonly asks: 'why' | 'person' };

/** An open question in words, with its answers. */
export function question(bench: Bench, turn: Turn, doubt: Doubt): { text: string; choices: Choice[] } {
  const { id } = turn;
  const { key } = doubt;
  const lengthMs = doubt.toMs - doubt.fromMs;
  const code = ({ by, isAtStation }: Who) => (isAtStation ? undefined : by);
  switch (doubt.kind) {
    case 'gap':
      return {
        text: (doubt.suggestion === 'slept' ? words.slept : words.pageGone)(lengthMs),
        choices: [
          { word: words.work, say: (who) => answerGap(bench, id, key, 'work', code(who)) },
          { word: words.chooseWhy, asks: 'why' },
        ],
      };
    case 'second-tap':
      return {
        text: words.secondTap(lengthMs),
        choices: [
          { word: words.secondIsPart, say: (who) => countTap(bench, id, key, code(who)) },
          { word: words.secondIsNone, say: (who) => leaveTapOut(bench, id, key, code(who)) },
        ],
      };
    case 'two-parts':
      return {
        text: words.longOne(lengthMs, doubt.suggestion.eachMs, 2 * doubt.suggestion.together),
        choices: (['two-parts', 'one-part'] as const).map((as) => ({
          word: words.longIs[as](doubt.suggestion.together),
          say: (who) => judgeCycle(bench, id, key, as, code(who)),
        })),
      };
    case 'long-part':
      return {
        text: words.farLonger(lengthMs, doubt.suggestion.usualMs),
        choices: (['interrupted', 'one-part'] as const).map((as) => ({
          word: words.farLongerIs[as],
          say: (who) => judgeCycle(bench, id, key, as, code(who)),
        })),
      };
    case 'before-change': {
      const { from, to, workedMs } = doubt.suggestion;
      return {
        text: words.beforeChange(workedMs, to.partCode),
        choices: (['set-up', 'next-part', 'part-before', 'left-out'] as const).map((as) => ({
          word: words.beforeIs[as](from.partCode, to.partCode),
          say: (who) => explainChange(bench, id, key, as, code(who)),
        })),
      };
    }
    case 'planned-break':
      return {
        text: words.breakIn(lengthMs),
        choices: [
          { word: words.breakTaken, say: (who) => answerBreak(bench, id, doubt, 'break', code(who)) },
          { word: words.breakWorked, say: (who) => answerBreak(bench, id, doubt, 'work', code(who)) },
        ],
      };
    case 'another-part': {
      const { fits, partsDone } = doubt.suggestion;
      const first = turn.cycles.find((cycle) => cycle.key === key);
      const chosen = first?.partCode ?? '';
      const asks = words.otherPart(partsDone.length, fits.partCode, roundedClockFace(fits.targetMs ?? 0));
      return {
        // What only the shop's present targets suggest takes no part out of a mean.
        text: first?.isCounted ? `${asks} ${words.countsMeanwhile(chosen)}` : asks,
        choices: [
          {
            word: words.itIs(fits.partCode),
            needsWhy: true,
            say: ({ by, why }) => recodeParts(bench, id, partsDone, fits, { by, why }),
          },
          { word: words.asChosen(chosen), say: (who) => confirmPart(bench, id, key, code(who)) },
        ],
      };
    }
    case 'same-person':
      return {
        text: doubt.suggestion.isShiftEnd
          ? words.stillAfterShift(doubt.suggestion.person)
          : words.stillPerson(lengthMs, doubt.suggestion.person),
        choices: [
          { word: words.yes, say: (who) => confirmPerson(bench, id, key, code(who)) },
          { word: words.someoneElse, needsWhy: true, asks: 'person' },
        ],
      };
  }
}
