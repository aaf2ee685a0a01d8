import { useState } from 'preact/hooks';
import { readTurnsBetween } from '../../application/review/read-turns-between';
import { localDay } from '../../domain/day/local-day';
import { ownPartsTable } from '../../exchange/own-parts-table';
import { writeTable } from '../../exchange/write-table';
import { ownRecord as words } from '../../i18n/en/own-record';
import { useApp } from '../app';
import { chosenForm } from '../records/chosen-profile';

const DAYS = 90;
const DAY_MS = 86_400_000;

/** What was recorded of a person in the last three months, as a file of their own. */
export function TakeOwnDays({ person }: { person: string }) {
  const { bench, files } = useApp();
  const [told, setTold] = useState('');
  const take = async () => {
    const now = bench.clock.now();
    const to = localDay(now);
    const from = localDay({ ...now, wallMs: now.wallMs - (DAYS - 1) * DAY_MS });
    try {
      const table = ownPartsTable(await readTurnsBetween(bench, { from, to }), person);
      const name = `${table.name}-${person.replace(/[^\p{L}\p{N}_-]/gu, '_')}-${from}-to-${to}.csv`;
      await files.save({ name, type: 'text/csv', text: writeTable(table, chosenForm.value) });
      setTold(words.taken(name, table.rows.length));
    } catch (error) {
      setTold(words.notTaken(String(error)));
    }
  };
  return (
    <section class="stack" aria-labelledby="pace-own-days">
      <h2 id="pace-own-days">{words.daysTitle}</h2>
      <div class="row">
        <button type="button" class="button" onClick={take}>
          {words.takeDays(person)}
        </button>
      </div>
      <p class="quiet small">{words.daysNote}</p>
      <p role="status">{told}</p>
    </section>
  );
}
