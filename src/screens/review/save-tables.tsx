import { useState } from 'preact/hooks';
import { readTurnsBetween } from '../../application/review/read-turns-between';
import type { DaySummary } from '../../domain/day/summarise-day';
import { localIso } from '../../domain/records/local-iso';
import { dayPartsTable } from '../../exchange/day-parts-table';
import { isoWeek } from '../../exchange/iso-week';
import { turnsTable } from '../../exchange/turns-table';
import { weeksTable } from '../../exchange/weeks-table';
import { writeTable } from '../../exchange/write-table';
import { saveTablesWords as words } from '../../i18n/en/save-tables';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { chosenForm } from '../records/chosen-profile';

type Wanted = 'spreadsheet' | 'parts' | 'weeks' | 'turns';

/** Takes a day, or all days that were read, out of the tablet: as a spreadsheet, as tables, or on paper. */
export function SaveTables({ day, days }: { day: string | null; days: readonly DaySummary[] }) {
  const app = useApp();
  const [isOneDay, setIsOneDay] = useState(true);
  const [told, setTold] = useState('');
  const one = days.filter((each) => each.day === day);
  const chosen = isOneDay && one.length > 0 ? one : [...days].reverse();
  // A day alone would be a week of one day.
  const weeks = new Set(chosen.map((each) => isoWeek(each.day)));
  const ofWeeks = [...days].reverse().filter((each) => weeks.has(isoWeek(each.day)));
  const [first, last] = [chosen[0]?.day ?? '', chosen.at(-1)?.day ?? ''];
  const save = async (wanted: Wanted) => {
    try {
      const file = await made(wanted);
      await app.files.save(file);
      setTold(words.saved(file.name));
    } catch (error) {
      setTold(words.failed(String(error)));
    }
  };
  const made = async (wanted: Wanted) => {
    const [from, to] = wanted === 'weeks' ? [ofWeeks[0]?.day, ofWeeks.at(-1)?.day] : [first, last];
    const span = from === to ? from : `${from}-to-${to}`;
    const prefix = app.isDemo ? 'demo-' : '';
    if (wanted === 'spreadsheet') {
      const [{ SPREADSHEET_TYPE, writeSpreadsheet }, { workbook }] = await Promise.all([
        import('../../exchange/write-spreadsheet'),
        import('./workbook'),
      ]);
      const { wallMs, offsetMin } = app.bench.clock.now();
      const about = [...words.about(first, last, localIso(wallMs, offsetMin)), words.seconds];
      const tables = await workbook(app.bench, chosen, ofWeeks);
      return {
        name: `${prefix}days-${span}.xlsx`,
        type: SPREADSHEET_TYPE,
        bytes: writeSpreadsheet(about, tables),
      };
    }
    const table = await {
      parts: () => dayPartsTable(chosen),
      weeks: () => weeksTable(ofWeeks),
      turns: async () => turnsTable(await readTurnsBetween(app.bench, { from: first, to: last })),
    }[wanted]();
    return {
      name: `${prefix}${table.name}-${span}.csv`,
      type: 'text/csv',
      text: writeTable(table, chosenForm.value),
    };
  };
  return (
    <section class="stack no-print" aria-labelledby="review-save-title">
      <h2 id="review-save-title">{words.title}</h2>
      {one.length > 0 && (
        <fieldset class="choices review-parts">
          <legend class="visually-hidden">{words.span}</legend>
          <button type="button" class="choice" aria-pressed={isOneDay} onClick={() => setIsOneDay(true)}>
            {words.thisDay(formatDay(day!))}
          </button>
          <button type="button" class="choice" aria-pressed={!isOneDay} onClick={() => setIsOneDay(false)}>
            {words.allDays(days.length)}
          </button>
        </fieldset>
      )}
      <div class="row">
        {(['spreadsheet', 'parts', 'weeks', 'turns'] as const).map((wanted) => (
          <button key={wanted} type="button" class="button" onClick={() => save(wanted)}>
            {words[wanted]}
          </button>
        ))}
        <button type="button" class="button" onClick={() => print()}>
          {words.print}
        </button>
      </div>
      <p class="small quiet">
        {words.note} {words.seconds}
      </p>
      <p role="status">{told}</p>
    </section>
  );
}
