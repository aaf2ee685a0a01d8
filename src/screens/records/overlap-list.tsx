import { useEffect, useState } from 'preact/hooks';
import { readTurnOverlaps } from '../../application/backup/read-turn-overlaps';
import type { TurnOverlap } from '../../domain/turn/overlapping-turns';
import { decimalMinutes } from '../../i18n/decimal-time';
import { copiesWords } from '../../i18n/en/copies';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { useLogChanges } from '../use-log-changes';
import { dayOfTurn } from './day-of-turn';

const words = copiesWords.overlaps;
/** What is older was seen or let be. */
const LOOKED_AT_MS = 31 * 86_400_000;

/** One person in two turns at once on two tablets, of the last month: for a person to put right. */
export function OverlapList() {
  const { bench, go } = useApp();
  const [overlaps, setOverlaps] = useState<readonly TurnOverlap[]>([]);
  const changes = useLogChanges();
  useEffect(() => {
    const now = bench.clock.now().wallMs;
    readTurnOverlaps(bench.log, { fromWallMs: now - LOOKED_AT_MS, toWallMs: now }).then(
      setOverlaps,
      () => {},
    );
  }, [bench, changes]);
  if (overlaps.length === 0) return null;
  return (
    <section class="stack records-overlaps" aria-labelledby="records-overlaps-title">
      <h2 id="records-overlaps-title">{words.title}</h2>
      <p class="quiet">{words.text}</p>
      <ul class="records-snapshots">
        {overlaps.map(({ person, first, second, overlapMs }) => {
          const day = dayOfTurn(second, bench.clock.now().offsetMin);
          return (
            <li key={`${first.id} ${second.id}`} class="row spread">
              <span class="number">
                {formatDay(day)},{' '}
                {words.line(person, decimalMinutes(overlapMs, 1), first.device, second.device)}
              </span>
              <button type="button" class="button plain" onClick={() => go('review', day)}>
                {words.review}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
