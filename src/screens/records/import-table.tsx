import { useState } from 'preact/hooks';
import { importStudies } from '../../application/study/import-studies';
import { faultForCopies } from '../../exchange/fault-for-copies';
import { readReadingsTable } from '../../exchange/read-readings-table';
import type { TableFault } from '../../exchange/table-fault';
import { recordsWords } from '../../i18n/en/records';
import { useApp } from '../app';
import { BroughtIntoView } from './brought-into-view';
import { tableFaultInWords } from './fault-in-words';

const words = recordsWords.take;
/** A study of an hour is 100 kB; a file beyond this is something else, and would only stall the tablet. */
const LARGEST_MB = 20;
/** More would not be read; mending the first often mends the rest. */
const MOST_SHOWN = 30;

interface Refusal {
  readonly sentence: string;
  readonly faults: readonly string[];
}

function refused({ name }: File, faults: readonly TableFault[]): Refusal {
  return { sentence: words.refused(name, faults.length), faults: faults.map(tableFaultInWords) };
}

/** A readings table from a file: taken whole, or refused with every fault by line and column. */
export function ImportTable() {
  const app = useApp();
  const [isReading, setReading] = useState(false);
  const [refusal, setRefusal] = useState<Refusal | null>(null);

  const take = async (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (!file) return;
    setReading(true);
    setRefusal(null);
    setRefusal(await takeTable(file));
    setReading(false);
    // The same file may be chosen again once it is mended.
    input.value = '';
  };

  const takeTable = async (file: File): Promise<Refusal | null> => {
    if (file.size > LARGEST_MB * 1_000_000) {
      return { sentence: words.tooLarge(file.name, LARGEST_MB), faults: [] };
    }
    try {
      const table = readReadingsTable(new Uint8Array(await file.arrayBuffer()));
      if (!table.ok) return refused(file, table.faults);
      const fault = faultForCopies(table);
      if (fault) return refused(file, [fault]);
      importStudies(app.bench, file.name, table.rows);
      app.go('study');
      return null;
    } catch (error) {
      return { sentence: words.unreadable(file.name, String(error)), faults: [] };
    }
  };
  return (
    <section class="stack records-take" aria-labelledby="records-take-title">
      <h2 id="records-take-title">{words.title}</h2>
      <p class="quiet">{words.text}</p>
      <div class="row">
        <label class={`button records-file ${app.isReadOnly ? 'records-off' : ''}`}>
          {words.choose}
          <input
            type="file"
            accept=".csv,.txt,text/csv,text/plain"
            class="visually-hidden"
            disabled={app.isReadOnly}
            onChange={(event) => take(event.currentTarget)}
          />
        </label>
      </div>
      <div role="status">{isReading && <p>{words.reading}</p>}</div>
      <div role="alert">
        {refusal && (
          <BroughtIntoView answer={refusal}>
            <RefusedTable {...refusal} />
          </BroughtIntoView>
        )}
      </div>
    </section>
  );
}

function RefusedTable({ sentence, faults }: Refusal) {
  return (
    <div class="fault stack">
      <p>
        <strong>{sentence}</strong>
      </p>
      {faults.length > 0 && (
        <ol class="records-faults">
          {faults.slice(0, MOST_SHOWN).map((fault) => (
            <li key={fault}>{fault}</li>
          ))}
        </ol>
      )}
      {faults.length > MOST_SHOWN && <p>{words.more(faults.length - MOST_SHOWN)}</p>}
    </div>
  );
}
