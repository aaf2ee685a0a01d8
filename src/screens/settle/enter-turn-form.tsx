import { useState } from 'preact/hooks';
import { enterTurn, type TurnTold } from '../../application/turn/enter-turn';
import { partInHand } from '../../application/turn/part-in-hand';
import { minuteOfClock } from '../../domain/shop/clock-minute';
import { knownCode } from '../../domain/shop/known-code';
import type { Part, Shop } from '../../domain/shop/shop';
import { wallTime } from '../../domain/shop/wall-time';
import { enterTurn as words } from '../../i18n/en/enter-turn';
import { useApp } from '../app';
import { reasonText } from '../pace/reason-text';
import { EnteredParts, type PartsTyped } from './entered-parts';
import { WhoForm } from './who-form';

interface Typed {
  readonly day: string;
  readonly person: string;
  readonly from: string;
  readonly to: string;
  readonly lines: readonly PartsTyped[];
  /** Minutes by reason. */
  readonly stopped: Readonly<Record<string, string>>;
}

const DAY_MS = 86_400_000;

/** A turn as somebody tells it, of the given day unless another is chosen: who, from when to when, how many of what, and what stood still. */
export function EnterTurnForm({ day, close }: { day: string; close(told: string): void }) {
  const { bench } = useApp();
  const shop = bench.shop.value;
  const parts = shop.parts.filter(({ retired }) => !retired);
  const [typed, setTyped] = useState<Typed>({
    day,
    person: '',
    from: '',
    to: '',
    lines: [{ part: parts[0]?.id ?? '', done: '', rework: '', scrap: '' }],
    stopped: {},
  });
  const [fault, setFault] = useState('');
  const [told, setTold] = useState<TurnTold | null>(null);
  const alter = (part: Partial<Typed>) => {
    setFault('');
    setTold(null);
    setTyped({ ...typed, ...part });
  };
  const check = (event: Event) => {
    event.preventDefault();
    const now = bench.clock.now();
    const read = readTurn(typed, { zone: now.zone, untilMs: now.wallMs, parts, shop });
    if (typeof read === 'string') setFault(words.faults[read]);
    else setTold(read);
  };
  return (
    <>
      <form class="stack panel" onSubmit={check} noValidate>
        <h3>{words.title}</h3>
        <p class="small quiet">{words.note}</p>
        <div class="settle-span">
          <label class="field">
            <span>{words.person}</span>
            <input
              value={typed.person}
              maxLength={16}
              autocomplete="off"
              onInput={(event) => alter({ person: event.currentTarget.value })}
            />
          </label>
          <label class="field">
            <span>{words.day}</span>
            <input
              type="date"
              value={typed.day}
              onInput={(event) => alter({ day: event.currentTarget.value })}
            />
          </label>
          {(['from', 'to'] as const).map((which) => (
            <label class="field" key={which}>
              <span>{words[which]}</span>
              <input
                type="time"
                value={typed[which]}
                onInput={(event) => alter({ [which]: event.currentTarget.value })}
              />
            </label>
          ))}
        </div>
        <EnteredParts parts={parts} lines={typed.lines} change={(lines) => alter({ lines })} />
        <p>{words.stoppedTitle}</p>
        <div class="settle-span">
          {shop.reasons.map(({ id, label }) => {
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
      {told && (
        <WhoForm
          who={{ by: '', why: '', isAtStation: false }}
          answer={words.enter}
          needsWhy
          done={(who) => {
            enterTurn(bench, told, who);
            close(words.entered);
          }}
          close={() => setTold(null)}
        />
      )}
    </>
  );
}

interface Known {
  readonly zone: string;
  readonly untilMs: number;
  readonly parts: readonly Part[];
  readonly shop: Shop;
}

/** The turn as typed, or what is wrong with it. An end that is not after its beginning is on the next day. */
function readTurn(typed: Typed, { zone, untilMs, parts, shop }: Known): TurnTold | keyof typeof words.faults {
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
  const areFine = lines.every(({ done, rework, scrap }) => rework + scrap <= done && done <= 5_000);
  if (!areFine || !lines.some(({ done }) => done > 0)) return 'parts';
  const stops = shop.reasons
    .map(({ id, label, category }) => ({
      category,
      reason: id,
      label,
      lostMs: whole(typed.stopped[id] ?? '') * 60_000,
    }))
    .filter(({ lostMs }) => lostMs !== 0);
  const stoppedMs = stops.reduce((sum, { lostMs }) => sum + lostMs, 0);
  if (!(stoppedMs <= toWallMs - fromWallMs)) return 'stops';
  return { person, fromWallMs, toWallMs, lines, stops };
}

/** A whole number as typed, 0 for nothing; NaN for anything else. */
function whole(text: string): number {
  return /^\d*$/.test(text.trim()) ? Number(text) : Number.NaN;
}
