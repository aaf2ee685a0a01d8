import { useEffect, useState } from 'preact/hooks';
import { listStudies, type StudyInList } from '../../application/study/list-studies';
import { readStudy } from '../../application/study/read-study';
import { localDay } from '../../domain/day/local-day';
import { countGuardedCells } from '../../exchange/count-guarded-cells';
import { writeReadingsTable } from '../../exchange/write-readings-table';
import { recordsWords } from '../../i18n/en/records';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { useLogChanges } from '../use-log-changes';
import { chosenForm } from './chosen-profile';
import { ExportWay } from './export-way';

const words = recordsWords.give;

/** The readings table of one study, chosen from the newest. */
export function StudyExport({ prefix }: { prefix: string }) {
  const { bench, files } = useApp();
  const [studies, setStudies] = useState<readonly StudyInList[]>([]);
  const [chosen, setChosen] = useState('');
  const changes = useLogChanges();

  useEffect(() => {
    let isCurrent = true;
    listStudies(bench).then(
      (found) => isCurrent && setStudies(found),
      () => isCurrent && setStudies([]),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, changes]);

  const study = studies.find(({ id }) => id === chosen) ?? studies[0];
  const save = async () => {
    const rows = (study && (await readStudy(bench, study.id)))?.readings.map(({ row }) => row) ?? [];
    if (!study || rows.length === 0) return words.noReadings;
    const name = `${prefix}readings-${fileNamePart(study.title)}.csv`;
    await files.save({ name, type: 'text/csv', text: writeReadingsTable(rows, chosenForm.value) });
    const guarded = countGuardedCells(rows);
    return words.saved(name) + (guarded > 0 ? words.guarded(guarded) : '');
  };
  if (!study) {
    return (
      <div class="records-way">
        <h3>{words.study}</h3>
        <p>{words.noStudy}</p>
      </div>
    );
  }
  return (
    <ExportWay title={words.study} text={words.studyText} button={words.saveStudy} act={save}>
      <label class="field">
        <span class="visually-hidden">{words.study}</span>
        <select value={study.id} onChange={(event) => setChosen(event.currentTarget.value)}>
          {studies.map(({ id, title, startedAt }) => (
            <option key={id} value={id}>
              {`${title} (${formatDay(localDay(startedAt))})`}
            </option>
          ))}
        </select>
      </label>
    </ExportWay>
  );
}

/** A title as part of a file's name, on any system. */
function fileNamePart(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[^\w-]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return plain.slice(0, 60) || 'study';
}
