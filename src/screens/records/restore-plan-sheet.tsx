import type { RestorePlan } from '../../application/backup/plan-restore';
import { localDay } from '../../domain/day/local-day';
import { copiesWords } from '../../i18n/en/copies';
import { formatDay } from '../../i18n/format-day';

const words = copiesWords.restore;
const MOST_PLACES = 3;

/** What a sound copy holds, what is new in it, what is here already, and what clashes. */
export function RestorePlanSheet({ plan }: { plan: RestorePlan }) {
  const { summary, added, alreadyThere, clashes, clashCount } = plan;
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
      {added === 0 && clashCount === 0 && <p>{words.nothingNew}</p>}
    </>
  );
}
