import { useState } from 'preact/hooks';
import { correctPerson } from '../../application/turn/correct-person';
import { reclassifyTime } from '../../application/turn/reclassify-time';
import { localIso } from '../../domain/records/local-iso';
import type { Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { useApp } from '../app';
import { reasonText } from '../pace/reason-text';
import type { Wanted } from './put-right';

interface Props {
  readonly turn: Turn;
  ask(wanted: Wanted): void;
}

const DAY_MS = 86_400_000;

/** A stretch of the turn: what it was, or whose it was. */
export function StretchRight({ turn, ask }: Props) {
  const { bench } = useApp();
  const [from, setFrom] = useState(clockAt(turn, 0));
  const [to, setTo] = useState(clockAt(turn, turn.lastAtMs));
  const [isMissing, setMissing] = useState(false);
  const { reasons, people } = bench.shop.value;
  const want = (word: string, say: (stretch: Stretch, who: { by: string; why: string }) => void) => {
    const stretch = readStretch(turn, from, to);
    setMissing(!stretch);
    if (stretch) ask({ word, say: (who) => say(stretch, who) });
  };
  const put = (
    word: string,
    as: Pick<Parameters<typeof reclassifyTime>[2], 'category' | 'reason' | 'label'>,
  ) => want(word, (stretch, who) => reclassifyTime(bench, turn.id, { ...stretch, ...as, ...who }));
  return (
    <div class="stack">
      <div class="settle-span">
        <TimeField label={words.from} value={from} change={setFrom} />
        <TimeField label={words.to} value={to} change={setTo} />
      </div>
      {isMissing && (
        <p class="fault" role="alert">
          {words.missing}
        </p>
      )}
      <p>{words.was}</p>
      <div class="choices">
        <button
          type="button"
          class="button"
          onClick={() => put(words.work, { category: 'cycle', reason: '', label: '' })}
        >
          {words.work}
        </button>
        {reasons.map(({ id, label, category }) => {
          const word = reasonText({ reason: id, label });
          return (
            <button
              type="button"
              key={id}
              class="button"
              onClick={() => put(word, { category, reason: id, label })}
            >
              {word}
            </button>
          );
        })}
      </div>
      {people.length > 0 && (
        <>
          <p>{words.whose}</p>
          <div class="choices">
            {people.map((code) => (
              <button
                type="button"
                key={code}
                class="button"
                onClick={() =>
                  want(code, (stretch, who) => correctPerson(bench, turn.id, code, who, stretch))
                }
              >
                {code}
              </button>
            ))}
          </div>
        </>
      )}
    </div>
  );
}

interface Stretch {
  readonly fromMs: number;
  readonly toMs: number;
}

function TimeField({ label, value, change }: { label: string; value: string; change(next: string): void }) {
  return (
    <label class="field">
      <span>{label}</span>
      <input type="time" step={1} value={value} onInput={(event) => change(event.currentTarget.value)} />
    </label>
  );
}

/** The wall clock at a place in the turn, to the second. */
function clockAt({ startedAt: { wallMs, offsetMin } }: Turn, atMs: number): string {
  return localIso(wallMs + atMs, offsetMin).slice(11, 19);
}

/** Two times of the clock as a stretch of the turn; the second of the start and of the end are its own. */
function readStretch(turn: Turn, from: string, to: string): Stretch | null {
  const place = (clock: string) => {
    const [, hours, minutes, seconds = '0'] = /^(\d\d):(\d\d)(?::(\d\d))?/.exec(clock) ?? [];
    if (hours === undefined) return Number.NaN;
    const { wallMs, offsetMin } = turn.startedAt;
    const sinceMidnightMs = (wallMs + offsetMin * 60_000) % DAY_MS;
    const atMs = ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds)) * 1_000;
    // A turn passes midnight; the second in which it began lies just before it.
    const placeMs = atMs - sinceMidnightMs;
    return placeMs > -1_000 ? placeMs : placeMs + DAY_MS;
  };
  const fromMs = from === clockAt(turn, 0) ? 0 : place(from);
  const toMs = to === clockAt(turn, turn.lastAtMs) ? turn.lastAtMs : place(to);
  return fromMs >= 0 && toMs > fromMs && toMs <= turn.lastAtMs ? { fromMs, toMs } : null;
}
