import { useState } from 'preact/hooks';
import { correctPerson } from '../../application/turn/correct-person';
import type { Turn } from '../../domain/turn/turn';
import { putRight as words } from '../../i18n/en/put-right';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { useApp } from '../app';
import type { Wanted } from './put-right';
import { clockAt, readStretch, StretchFields } from './stretch-fields';

interface Props {
  readonly turn: Turn;
  ask(wanted: Wanted): void;
}

/** Whose the turn was, or a stretch of it; the code on record is marked. */
export function PersonRight({ turn, ask }: Props) {
  const { bench } = useApp();
  const [from, setFrom] = useState(clockAt(turn, 0));
  const [to, setTo] = useState(clockAt(turn, turn.lastAtMs));
  const stretch = readStretch(turn, from, to);
  const there = turn.people.filter(
    (span) => stretch !== null && span.fromMs < stretch.toMs && span.toMs > stretch.fromMs,
  );
  const onRecord = new Set(there.map(({ person }) => person));
  const codes = [...new Set([...bench.shop.value.people, ...turn.people.map(({ person }) => person)])];
  return (
    <div class="stack">
      <StretchFields from={from} to={to} setFrom={setFrom} setTo={setTo} isMissing={stretch === null} />
      <p>{words.whose}</p>
      <div class="choices">
        {codes.map((code) => {
          const isOnRecord = onRecord.has(code);
          return (
            <button
              type="button"
              key={code}
              class="choice"
              aria-pressed={isOnRecord}
              disabled={stretch === null || (isOnRecord && onRecord.size === 1)}
              onClick={() =>
                ask({
                  word: words.putAs(from, to, roundedClockFace(stretch!.toMs - stretch!.fromMs), code),
                  say: (who) => correctPerson(bench, turn.id, code, who, stretch),
                })
              }
            >
              {isOnRecord ? words.onRecord(code) : code}
            </button>
          );
        })}
      </div>
    </div>
  );
}
