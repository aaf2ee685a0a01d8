import { useState } from 'preact/hooks';
import { writeRecordsFile } from '../../application/records/write-records-file';
import { readDays } from '../../application/review/read-days';
import { localDay } from '../../domain/day/local-day';
import { writeDayTable } from '../../exchange/write-day-table';
import { recordsWords } from '../../i18n/en/records';
import { useApp } from '../app';
import { chosenForm } from './chosen-profile';
import { ProfileChoice } from './profile-choice';
import { StudyExport } from './study-export';

const words = recordsWords.give;

/** The ways out: one study, all days, everything. Each says what it handed over. */
export function ExportSection() {
  const { bench, files, isDemo } = useApp();
  const [told, setTold] = useState('');
  const day = () => localDay(bench.clock.now());
  const prefix = isDemo ? 'demo-' : '';

  /** Runs a way out; whatever stands against it is said, and nothing is handed over. */
  const tell = async (act: () => Promise<string>) => {
    setTold('');
    try {
      setTold(await act());
    } catch (error) {
      setTold(words.failed(String(error)));
    }
  };
  const saveDays = async () => {
    const days = await readDays(bench);
    if (days.every(({ parts }) => parts.length === 0)) return words.noDays;
    const name = `${prefix}days-${day()}.csv`;
    await files.save({ name, type: 'text/csv', text: writeDayTable(days, chosenForm.value) });
    return words.saved(name);
  };
  const saveEverything = async () => {
    const { text, records, leftOut } = await writeRecordsFile(bench);
    const name = `${prefix}records-${bench.log.device}-${day()}.json`;
    await files.save({ name, type: 'application/json', text });
    return words.whole(name, records) + (leftOut > 0 ? words.leftOut(leftOut) : '');
  };
  return (
    <section class="stack" aria-labelledby="records-give-title">
      <h2 id="records-give-title">{words.title}</h2>
      <div class="records-way">
        <h3>{words.everything}</h3>
        <p class="quiet">{words.everythingText}</p>
        <button type="button" class="button strong" onClick={() => tell(saveEverything)}>
          {words.saveEverything}
        </button>
      </div>
      <ProfileChoice />
      <StudyExport prefix={prefix} tell={tell} />
      <div class="records-way">
        <h3>{words.days}</h3>
        <p class="quiet">{words.daysText}</p>
        <button type="button" class="button" onClick={() => tell(saveDays)}>
          {words.saveDays}
        </button>
      </div>
      <p class="records-told" role="status">
        {told}
      </p>
    </section>
  );
}
