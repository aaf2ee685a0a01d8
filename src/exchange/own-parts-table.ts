import { localDay } from '../domain/day/local-day';
import { localIso } from '../domain/records/local-iso';
import { leftOut } from '../domain/turn/left-out';
import { ownOfTurn } from '../domain/turn/own-of-turn';
import type { Turn } from '../domain/turn/turn';
import { day, NOT_FOR_PAY, number, type TypedTable, text, whole } from './typed-table';

const columns = [
  day('day'),
  text('done_at'),
  text('part'),
  number('net_time_s', 1),
  number('target_s', 1),
  text('outcome'),
  whole('in_averages'),
  text('left_out_because'),
  NOT_FOR_PAY,
];

/** Every part that one person made alone in some turns, oldest first: what was recorded of them, and the target then. */
export function ownPartsTable(turns: readonly Turn[], person: string): TypedTable {
  return {
    name: 'own-parts',
    columns,
    rows: [...turns]
      .sort((a, b) => a.startedAt.wallMs - b.startedAt.wallMs)
      .flatMap((turn) =>
        ownOfTurn(turn, person)
          .cycles.filter((cycle) => cycle.person === person)
          .map((cycle) => {
            const { doneAt, partCode, netMs, targetMs, outcome, isCounted, setAside } = cycle;
            return [
              localDay(doneAt),
              localIso(doneAt.wallMs, doneAt.offsetMin),
              partCode,
              netMs / 1_000,
              targetMs === null ? null : targetMs / 1_000,
              outcome,
              isCounted ? 1 : 0,
              setAside || (leftOut(cycle) ?? ''),
            ];
          }),
      ),
  };
}
