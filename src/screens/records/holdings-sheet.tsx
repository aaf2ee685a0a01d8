import type { ComponentChildren } from 'preact';
import { recordsWords } from '../../i18n/en/records';
import { formatDay } from '../../i18n/format-day';
import { formatNumber } from '../../i18n/format-number';
import { formatSize } from '../../i18n/format-size';
import { useApp } from '../app';
import { useStorageOutlook } from '../use-storage-outlook';
import { LastingPromise } from './lasting-promise';
import { useHoldings } from './use-holdings';

const words = recordsWords.kept;

/** What is saved, under which name, how often, and whether it may be deleted. Its lines stand before they are counted. */
export function HoldingsSheet() {
  const { bench, copies } = useApp();
  const { holdings, problem } = useHoldings();
  const { state, unsaved } = bench.saving.value;
  return (
    <section class="stack records-kept" aria-labelledby="records-kept-title">
      <h1 id="records-kept-title">{words.title}</h1>
      {problem && (
        <p class="fault" role="alert">
          {recordsWords.trouble(problem)}
        </p>
      )}
      {(holdings || !problem) && (
        <p class="records-count number">
          <strong>{holdings ? formatNumber(holdings.records) : '…'}</strong>{' '}
          {holdings ? words.saved(holdings.records) : recordsWords.reading}
        </p>
      )}
      <table class="sheet records-sheet">
        <tbody>
          <Row name={words.rows.holds}>{holdings && words.holds(holdings.turns, holdings.studies)}</Row>
          <Row name={words.rows.days}>
            {holdings &&
              (holdings.days
                ? words.days(formatDay(holdings.days.first), formatDay(holdings.days.last))
                : words.noDays)}
          </Row>
          <Row name={words.rows.tablet}>
            <span class="number">{holdings?.device}</span>
          </Row>
          {state === 'not-saved' && <Row name={words.rows.unsaved}>{words.unsaved(unsaved)}</Row>}
          <Row name={words.rows.copies}>{words.copies[copies]}</Row>
          <Row name={words.rows.room}>
            <RoomLeft />
          </Row>
          <Row name={words.rows.lasting}>
            <LastingPromise />
          </Row>
        </tbody>
      </table>
    </section>
  );
}

function RoomLeft() {
  const outlook = useStorageOutlook();
  if (!outlook) return null;
  const { roomBytes, isLittle } = outlook;
  if (roomBytes === null) return <>{words.noRoom}</>;
  const size = formatSize(roomBytes);
  return <span class="number">{isLittle ? words.littleRoom(size) : size}</span>;
}

function Row({ name, children }: { name: string; children: ComponentChildren }) {
  return (
    <tr>
      <th scope="row" class="words">
        {name}
      </th>
      <td class="words">{children}</td>
    </tr>
  );
}
