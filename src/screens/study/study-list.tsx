import { useEffect, useState } from 'preact/hooks';
import { listStudies, type StudyInList } from '../../application/study/list-studies';
import { study } from '../../i18n/en/study';
import { useApp } from '../app';
import { routeHash } from '../route';
import { keptDraft } from './kept-draft';
import { momentWords } from './moment-words';

const words = study.list;

/** The studies of this tablet, newest first. */
export function StudyList() {
  const app = useApp();
  const { bench } = app;
  const [studies, setStudies] = useState<StudyInList[] | 'reading' | 'failed'>('reading');
  const changes = bench.changes.value;
  const { state } = bench.saving.value;

  // What is in the log changes with every record, and once more when it is saved.
  useEffect(() => {
    let isCurrent = true;
    listStudies(bench).then(
      (found) => isCurrent && setStudies(found),
      () => isCurrent && setStudies('failed'),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, changes, state]);

  return (
    <div class="page stack">
      <div class="row spread">
        <h1>{words.title}</h1>
        <button
          type="button"
          class="button strong"
          disabled={app.isReadOnly}
          onClick={() => app.go('study', 'new')}
        >
          {keptDraft.of(app) ? words.goOn : words.start}
        </button>
      </div>
      {studies === 'reading' && <p class="quiet">{words.reading}</p>}
      {studies === 'failed' && (
        <p class="fault" role="alert">
          {words.failed}
        </p>
      )}
      {Array.isArray(studies) && studies.length === 0 && <p class="quiet">{words.empty}</p>}
      {Array.isArray(studies) && studies.length > 0 && (
        <table class="sheet study-list">
          <thead>
            <tr>
              <th scope="col">{words.name}</th>
              <th scope="col" class="words">
                {words.part}
              </th>
              <th scope="col" class="words">
                {words.when}
              </th>
            </tr>
          </thead>
          <tbody>
            {studies.map(({ id, title, partCode, startedAt, imported }) => (
              <tr key={id}>
                <td>
                  <a href={routeHash({ screen: 'study', id, isDemo: app.isDemo })}>{title}</a>
                  {imported && <span class="quiet small"> {words.imported}</span>}
                </td>
                <td class="words">{partCode}</td>
                <td class="words">{momentWords(startedAt)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </div>
  );
}
