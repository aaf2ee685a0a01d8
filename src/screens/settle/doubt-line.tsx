import './settle.css';
import type { Bench } from '../../application/bench';
import { answerGap } from '../../application/turn/answer-gap';
import { confirmPart } from '../../application/turn/confirm-part';
import { confirmPerson } from '../../application/turn/confirm-person';
import { countTap } from '../../application/turn/count-tap';
import { judgeCycle } from '../../application/turn/judge-cycle';
import { leaveTapOut } from '../../application/turn/leave-tap-out';
import { recodeParts } from '../../application/turn/recode-parts';
import type { Doubt } from '../../domain/turn/doubt';
import type { Turn } from '../../domain/turn/turn';
import { settle as words } from '../../i18n/en/settle';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { useApp } from '../app';

interface Props {
  readonly turn: Turn;
  readonly doubt: Doubt;
  /** Who answers, and why where a part or a person changes; null while that is not known. */
  readonly answers: { readonly by: string; readonly why: string } | null;
  /** At the station the operator is named; elsewhere nobody is. */
  readonly isAtStation: boolean;
  readonly when?: string;
  chooseWhy(event: MouseEvent): void;
  otherPerson(event: MouseEvent): void;
  answered(): void;
}

interface Answer {
  readonly word: string;
  readonly needsWhy?: boolean;
  act(event: MouseEvent): void;
}

/** One open question in one line, with its answers beside it. */
export function DoubtLine(props: Props) {
  const { bench, isReadOnly } = useApp();
  const { text, choices } = question(bench, props);
  const { answers, when, isAtStation } = props;
  const isOff = ({ needsWhy }: Answer) => isReadOnly || !answers || (needsWhy === true && answers.why === '');
  return (
    <div class={`settle-line ${isAtStation ? 'is-at-station' : ''}`}>
      <p class="number">
        {when && <strong>{when} </strong>}
        {text}
      </p>
      {choices.map((choice) => (
        <button
          type="button"
          key={choice.word}
          class="button"
          disabled={isOff(choice)}
          aria-label={`${text}: ${choice.word}`}
          onClick={choice.act}
        >
          {choice.word}
        </button>
      ))}
    </div>
  );
}

function question(bench: Bench, props: Props): { text: string; choices: Answer[] } {
  const { turn, doubt, answers, isAtStation, chooseWhy, otherPerson, answered } = props;
  const { key } = doubt;
  const by = isAtStation ? undefined : answers?.by;
  const lengthMs = doubt.toMs - doubt.fromMs;
  const say = (word: string, act: () => void): Answer => ({
    word,
    act() {
      act();
      answered();
    },
  });
  switch (doubt.kind) {
    case 'gap':
      return {
        text: (doubt.suggestion === 'slept' ? words.slept : words.pageGone)(lengthMs),
        choices: [
          say(words.work, () => answerGap(bench, turn.id, key, 'work', by)),
          { word: words.chooseWhy, act: chooseWhy },
        ],
      };
    case 'second-tap':
      return {
        text: words.secondTap,
        choices: [
          say(words.countIt, () => countTap(bench, turn.id, key, by)),
          say(words.leaveOut, () => leaveTapOut(bench, turn.id, key, by)),
        ],
      };
    case 'two-parts':
      return {
        text: words.longOne(doubt.suggestion.eachMs),
        choices: (['two-parts', 'one-part'] as const).map((as) =>
          say(as === 'two-parts' ? words.twoParts : words.onePart, () =>
            judgeCycle(bench, turn.id, key, as, by),
          ),
        ),
      };
    case 'another-part': {
      const { fits, partsDone } = doubt.suggestion;
      const chosen = turn.cycles.find((cycle) => cycle.key === key)?.partCode ?? '';
      const who = isAtStation ? { by: turn.person, why: words.saidAtStation } : answers;
      return {
        text: words.otherPart(partsDone.length, fits.partCode, roundedClockFace(fits.targetMs ?? 0)),
        choices: [
          {
            ...say(words.itIs(fits.partCode), () => {
              if (who) recodeParts(bench, turn.id, partsDone, fits, who);
            }),
            needsWhy: true,
          },
          say(words.asChosen(chosen), () => confirmPart(bench, turn.id, key, by)),
        ],
      };
    }
    case 'same-person':
      return {
        text: isAtStation ? words.stillPerson(doubt.suggestion.person) : words.stillSame(lengthMs),
        choices: [
          say(words.yes, () => confirmPerson(bench, turn.id, key, by)),
          { word: words.someoneElse, act: otherPerson },
        ],
      };
  }
}
