import type { RestorePlan } from '../../application/backup/plan-restore';
import { localDay } from '../../domain/day/local-day';
import { localIso } from '../../domain/records/local-iso';
import { copiesWords } from '../../i18n/en/copies';
import { formatDay } from '../../i18n/format-day';

const words = copiesWords.restore;
const MOST_PLACES = 3;
/** Two tablets whose clocks nobody set differ by no more. */
const CLOCKS_AGREE_MS = 300_000;

/** What a sound copy holds, what is new in it, what is here already, and what clashes. */
export function RestorePlanSheet({ plan, nowMs }: { plan: RestorePlan; nowMs: number }) {
  const { summary, added, alreadyThere, clashes, clashCount, newest } = plan;
  const { madeAt, device, release } = summary;
  const names = summary.devices.map(({ device: name }) => name).join(', ');
  const places = clashes
    .slice(0, MOST_PLACES)
    .map((each) => words.clash(each.device, each.sequence))
    .join(', ');
  const rows: [string, string][] = [
    [words.rows.made, words.made(formatDay(localDay(madeAt)), device, release)],
    [words.rows.holds, `${copiesWords.records(summary.records)} ${names && words.tablets(names)}`],
    [words.rows.added, copiesWords.records(added)],
    [words.rows.there, copiesWords.records(alreadyThere)],
    [words.rows.clashes, clashCount === 0 ? words.none : words.clashText(clashCount, places)],
  ];
  if (summary.breakCount > 0) rows.push([words.rows.breaks, words.breaks(summary.breakCount)]);
  return (
    <>
      <table class="sheet records-sheet">
        <tbody>
          {rows.map(([name, text]) => (
            <tr key={name}>
              <th scope="row" class="words">
                {name}
              </th>
              <td class="words number records-name">{text}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {newest && newest.wallMs - nowMs > CLOCKS_AGREE_MS && (
        <p class="fault" role="alert">
          {words.ahead(formatDay(localDay(newest)), localIso(newest.wallMs, newest.offsetMin).slice(11, 16))}
        </p>
      )}
      {added === 0 && clashCount === 0 && <p>{words.nothingNew}</p>}
    </>
  );
}
