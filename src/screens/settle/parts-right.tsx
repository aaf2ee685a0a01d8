import { useState } from 'preact/hooks';
import { judgeCycle } from '../../application/turn/judge-cycle';
import { judgePart } from '../../application/turn/judge-part';
import { leaveTapOut } from '../../application/turn/leave-tap-out';
import { partInHand } from '../../application/turn/part-in-hand';
import { recodeParts } from '../../application/turn/recode-parts';
import { setPartAside } from '../../application/turn/set-part-aside';
import { takePartBack } from '../../application/turn/take-part-back';
import type { Cycle, Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { useApp } from '../app';
import { timeOfDay } from '../pace/time-of-day';
import { type ChosenRun, withFirst, withLast } from './chosen-run';
import type { Wanted } from './put-right';

interface Props {
  readonly turn: Turn;
  ask(wanted: Wanted): void;
}

/** One part, or a run of them: how they are, whether they count, and what they were. */
export function PartsRight({ turn, ask }: Props) {
  const { bench } = useApp();
  const { cycles, id } = turn;
  const newest = cycles.length - 1;
  const [wanted, setRun] = useState<ChosenRun>({ first: newest, last: newest });
  // One that is said to be none is gone from the list.
  const run = { ...wanted, first: Math.min(wanted.first, newest), last: Math.min(wanted.last, newest) };
  const { first, last } = run;
  const chosen = cycles.slice(first, last + 1);
  /** A tap may stand for several parts: it is set aside, or recoded, as a whole. */
  const taps = [...new Set(chosen.map(({ key }) => key.split('/')[0]!))];
  const each = (act: (tap: string) => void) => {
    for (const tap of taps) act(tap);
  };
  const others = bench.shop.value.parts.filter(
    (part) => !part.retired && chosen.some((cycle) => cycle.part !== part.id),
  );
  const count = chosen.length;
  const choices: (Wanted & { readonly button: string })[] = [
    ...(['good', 'rework', 'scrap'] as const).map((outcome) => ({
      button: words[outcome],
      word: words.mark(count, words[outcome]),
      isFree: true as const,
      say: () => {
        for (const { key } of chosen) judgePart(bench, id, key, outcome);
      },
    })),
    ...(count === 1 && taps[0] === chosen[0]!.key && !isHalf(cycles, taps[0]!)
      ? [
          {
            button: words.wasTwo,
            word: words.wasTwo,
            isAnswer: true as const,
            say: ({ by }: { by: string }) => judgeCycle(bench, id, taps[0]!, 'two-parts', by),
          },
        ]
      : []),
    ...(taps.length === 1 && isWhole(cycles, chosen, taps[0]!)
      ? [
          {
            button: words.wasNone,
            word: words.wasNone,
            isAnswer: true as const,
            say: ({ by }: { by: string }) => leaveTapOut(bench, id, taps[0]!, by),
          },
        ]
      : []),
    chosen.every(({ setAside }) => setAside !== '')
      ? {
          button: words.takeBack,
          word: words.takeBackAll(count),
          isAnswer: true,
          say: ({ by }) => each((tap) => takePartBack(bench, id, tap, by)),
        }
      : {
          button: words.setAside,
          word: words.setAsideAll(count),
          say: ({ by, why }) => each((tap) => setPartAside(bench, id, tap, why, by)),
        },
    ...others.map((part) => ({
      button: words.changeTo(part.code),
      word: words.changeAll(count, part.code),
      say: (who: { by: string; why: string }) => recodeParts(bench, id, taps, partInHand(part), who),
    })),
  ];
  return (
    <div class="stack">
      <div class="settle-span">
        <PartField
          label={words.fromPart}
          cycles={cycles}
          value={first}
          choose={(place) => setRun(withFirst(run, place))}
        />
        <PartField
          label={words.toPart}
          cycles={cycles}
          value={last}
          choose={(place) => setRun(withLast(run, place))}
        />
      </div>
      <p>{words.howMany(count)}</p>
      <div class="choices">
        {choices.map((choice) => (
          <button type="button" key={choice.word} class="button" onClick={() => ask(choice)}>
            {choice.button}
          </button>
        ))}
      </div>
    </div>
  );
}

/** Said to be two parts already, or several at once: the others of its tap stand beside it. */
function isHalf(cycles: readonly Cycle[], tap: string): boolean {
  return cycles.some(({ key }) => key.startsWith(`${tap}/`));
}

/** All that its tap tells is chosen: a tap is a part or it is none, and no half of one. */
function isWhole(cycles: readonly Cycle[], chosen: readonly Cycle[], tap: string): boolean {
  return cycles.filter(({ key }) => key.split('/')[0] === tap).length === chosen.length;
}

interface FieldProps {
  readonly label: string;
  readonly cycles: readonly Cycle[];
  readonly value: number;
  choose(place: number): void;
}

function PartField({ label, cycles, value, choose }: FieldProps) {
  return (
    <label class="field">
      <span>{label}</span>
      <select value={value} onChange={(event) => choose(Number(event.currentTarget.value))}>
        {cycles.map(({ key, doneAt, partCode, netMs }, place) => (
          <option key={key} value={place}>
            {`${timeOfDay(doneAt)} · ${partCode} · ${roundedClockFace(netMs)}`}
          </option>
        ))}
      </select>
    </label>
  );
}
