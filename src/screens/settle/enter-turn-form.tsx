import { useState } from 'preact/hooks';
import { enterTurn, type TurnTold } from '../../application/turn/enter-turn';
import { partInHand } from '../../application/turn/part-in-hand';
import { turnsInTheWay } from '../../application/turn/turns-in-the-way';
import { minuteOfClock } from '../../domain/shop/clock-minute';
import { knownCode } from '../../domain/shop/known-code';
import type { Part, Shop } from '../../domain/shop/shop';
import { offsetMin, wallTime } from '../../domain/shop/wall-time';
import { mealsWithin } from '../../domain/turn/meals-within';
import type { TurnSpan } from '../../domain/turn/turn-span';
import { enterTurn as words } from '../../i18n/en/enter-turn';
import { shell } from '../../i18n/en/shell';
import { formatDay } from '../../i18n/format-day';
import { parseWhole } from '../../i18n/parse-number';
import { useApp } from '../app';
import { ClockField } from '../clock-field';
import { reasonText } from '../pace/reason-text';
import { timeOfDay } from '../pace/time-of-day';
import { CodeField } from './code-field';
import { EnteredParts, emptyLine, type PartsTyped } from './entered-parts';
import { EnteredReview } from './entered-review';
import type { Who } from './question';
import { WhoForm } from './who-form';
import { withBreak } from './with-break';

interface Typed {
  readonly day: string;
  readonly person: string;
  readonly from: string;
  readonly to: string;
  readonly lines: readonly PartsTyped[];
  /** Minutes by reason. */
  readonly stopped: Readonly<Record<string, string>>;
}

interface Props {
  readonly day: string;
  readonly who: Who;
  setWho(who: Who): void;
  /** With the day on which it now stands, where one was entered. */
  close(told: string, day?: string): void;
}

const DAY_MS = 86_400_000;

/** A turn as somebody tells it, of the given day unless another is chosen: who, from when to when, how many of what, and what stood still. */
export function EnterTurnForm({ day, who, setWho, close }: Props) {
  const { bench } = useApp();
  const shop = bench.shop.value;
  const parts = shop.parts.filter(({ retired }) => !retired);
  const [typed, setTyped] = useState<Typed>({
    day,
    person: '',
    from: '',
    to: '',
    lines: [emptyLine(parts)],
    stopped: {},
  });
  const [fault, setFault] = useState('');
  const [told, setTold] = useState<TurnTold | null>(null);
  const [beside, setBeside] = useState<TurnSpan | null>(null);
  const alter = (part: Partial<Typed>) => {
    setFault('');
    setBeside(null);
    setTold(null);
    setTyped({ ...typed, ...part });
  };
  const check = async (event: Event) => {
    event.preventDefault();
    const now = bench.clock.now();
    const read = readTurn(typed, { zone: now.zone, untilMs: now.wallMs, parts, shop });
    if (typeof read === 'string') return setFault(words.faults[read]);
    const { state, unsaved, isInReserve } = bench.saving.peek();
    // Turns in the way are looked for in the log: one that was just entered must be there first.
    if (unsaved > 0) {
      return setFault(state === 'recorded' ? shell.recorded : shell.notSaved(unsaved, isInReserve));
    }
    setFault('');
    const others = await turnsInTheWay(bench, read);
    const own = others.find(({ person }) => person === read.person);
    if (own) return setFault(words.faults.inTheWay(own.person, ...clocks(own, now.zone)));
    setBeside(others[0] ?? null);
    setTold(read);
  };
  return (
    <>
      <form class="stack panel" onSubmit={check} noValidate>
        <h3>{words.title}</h3>
        <p class="small quiet">{words.note}</p>
        <div class="settle-span">
          <CodeField label={words.person} value={typed.person} choose={(person) => alter({ person })} />
          <label class="field">
            <span>{words.day}</span>
            <input
              type="date"
              value={typed.day}
              onInput={(event) => alter({ day: event.currentTarget.value })}
            />
          </label>
          {(['from', 'to'] as const).map((which) => (
            <ClockField
              key={which}
              label={words[which]}
              value={typed[which]}
              change={(next) => alter({ [which]: next })}
            />
          ))}
        </div>
        <EnteredParts parts={parts} lines={typed.lines} change={(lines) => alter({ lines })} />
        <p>{words.stoppedTitle}</p>
        <div class="settle-span">
          {withBreak(shop.reasons).map(({ id, label }) => {
            const name = reasonText({ reason: id, label });
            return (
              <label class="field settle-minutes" key={id}>
                <span>{name}</span>
                <input
                  aria-label={words.stopped(name)}
                  inputMode="numeric"
                  maxLength={4}
                  value={typed.stopped[id] ?? ''}
                  onInput={(event) =>
                    alter({ stopped: { ...typed.stopped, [id]: event.currentTarget.value } })
                  }
                />
              </label>
            );
          })}
        </div>
        {fault && (
          <p class="fault" role="alert">
            {fault}
          </p>
        )}
        <div class="row">
          <button type="submit" class="button strong">
            {words.next}
          </button>
          <button type="button" class="button" onClick={() => close('')}>
            {words.cancel}
          </button>
        </div>
      </form>
      {told && <EnteredReview told={told} zone={bench.clock.now().zone} />}
      {told && beside && <p role="status">{words.beside(...clocks(beside, bench.clock.now().zone))}</p>}
      {told && (
        <WhoForm
          who={{ ...who, why: '' }}
          submit={words.enter}
          needsWhy
          reasons={[]}
          done={(given) => {
            enterTurn(bench, told, given);
            setWho({ ...given, why: '' });
            close(words.entered(formatDay(typed.day)), typed.day);
          }}
          close={() => setTold(null)}
        />
      )}
    </>
  );
}

type Fault = Exclude<keyof typeof words.faults, 'inTheWay'>;

interface Known {
  readonly zone: string;
  readonly untilMs: number;
  readonly parts: readonly Part[];
  readonly shop: Shop;
}

/** The turn as typed, or what is wrong with it. An end that is not after its beginning is on the next day. */
function readTurn(typed: Typed, { zone, untilMs, parts, shop }: Known): TurnTold | Fault {
  const person = knownCode(shop.people, typed.person);
  if (person === '') return 'person';
  const from = minuteOfClock(typed.from);
  const to = minuteOfClock(typed.to);
  if (from === null || to === null || from === to || typed.day === '') return 'times';
  const fromWallMs = wallTime(typed.day, from, zone);
  const toWallMs = wallTime(typed.day, to > from ? to : to + 1_440, zone);
  if (toWallMs > untilMs || toWallMs - fromWallMs > DAY_MS) return 'times';
  const lines = typed.lines.flatMap(({ part, done, rework, scrap }) => {
    const known = parts.find(({ id }) => id === part);
    return known && done.trim() !== ''
      ? [{ ...partInHand(known), done: whole(done), rework: whole(rework), scrap: whole(scrap) }]
      : [];
  });
  // Parts that were counted are never left out because nobody said which.
  const isUntold = typed.lines.some(({ part, done }) => part === '' && done.trim() !== '');
  if (isUntold) return 'whichPart';
  const areFine = lines.every(({ done, rework, scrap }) => rework + scrap <= done && done <= 5_000);
  if (!areFine || !lines.some(({ done }) => done > 0)) return 'parts';
  const stops = withBreak(shop.reasons)
    .map(({ id, label, category }) => ({
      category,
      reason: id,
      label,
      lostMs: whole(typed.stopped[id] ?? '') * 60_000,
    }))
    .filter(({ lostMs }) => lostMs !== 0);
  const meals = mealsWithin(shop.calendar, { fromWallMs, toWallMs }, zone);
  const stoppedMs = [...meals, ...stops].reduce((sum, { lostMs }) => sum + lostMs, 0);
  if (!(stoppedMs <= toWallMs - fromWallMs)) return 'stops';
  return { person, fromWallMs, toWallMs, lines, stops: [...meals, ...stops] };
}

/** From when to when a turn was, by the shop's clock. */
function clocks({ fromWallMs, toWallMs }: TurnSpan, zone: string): [from: string, to: string] {
  const clock = (wallMs: number) => timeOfDay({ wallMs, offsetMin: offsetMin(wallMs, zone) });
  return [clock(fromWallMs), clock(toWallMs)];
}

/** A whole number as typed, 0 for nothing; NaN for anything else. */
function whole(text: string): number {
  return text.trim() === '' ? 0 : (parseWhole(text) ?? Number.NaN);
}
