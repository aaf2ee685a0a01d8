import { readSummaries } from '../../application/review/read-summaries';
import { localDay } from '../../domain/day/local-day';
import { dayPartsTable } from '../../exchange/day-parts-table';
import { writeTable } from '../../exchange/write-table';
import { recordsWords } from '../../i18n/en/records';
import { useApp } from '../app';
import { chosenForm } from './chosen-profile';
import { ExportWay } from './export-way';
import { ProfileChoice } from './profile-choice';
import { StudyExport } from './study-export';

const words = recordsWords.give;
/** Every day there is. */
const ALWAYS = { from: '1970-01-02', to: '9999-12-30' };

/** Tables out of the tablet: one study, all days. */
export function ExportSection() {
  const { bench, files, isDemo, summaries } = useApp();
  const today = () => localDay(bench.clock.now());
  const prefix = isDemo ? 'demo-' : '';

  const saveDays = async () => {
    const { days } = await readSummaries(bench, await summaries(), ALWAYS);
    if (days.every(({ parts }) => parts.length === 0)) return words.noDays;
    const name = `${prefix}days-${today()}.csv`;
    await files.save({ name, type: 'text/csv', text: writeTable(dayPartsTable(days), chosenForm.value) });
    return words.saved(name);
  };
  return (
    <section class="stack records-give" aria-labelledby="records-give-title">
      <h2 id="records-give-title">{words.title}</h2>
      <ProfileChoice />
      <StudyExport prefix={prefix} />
      <ExportWay title={words.days} text={words.daysText} button={words.saveDays} act={saveDays} />
    </section>
  );
}
