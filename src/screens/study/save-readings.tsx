import { useState } from 'preact/hooks';
import type { Study } from '../../domain/study/study';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { useApp } from '../app';

/** The readings as a table, out of the tablet: every figure of the sheet can be computed from it again. */
export function SaveReadings({ study }: { study: Study }) {
  const { files } = useApp();
  const [said, setSaid] = useState('');
  const save = async () => {
    try {
      const { writeReadingsTable } = await import('../../exchange/write-readings-table');
      const text = writeReadingsTable(study.readings.map(({ row }) => row));
      await files.save({ name: fileName(study.title), type: 'text/csv', text });
      setSaid(words.saved);
    } catch {
      setSaid(words.notSaved);
    }
  };
  return (
    <div class="row">
      <button type="button" class="button" onClick={save}>
        {words.save}
      </button>
      <p class="quiet" role="status">
        {said}
      </p>
    </div>
  );
}

/** Letters and numbers of every language stay; what a file system may refuse does not. */
function fileName(title: string): string {
  const name = title.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '');
  return `${name || 'study'}.csv`;
}
