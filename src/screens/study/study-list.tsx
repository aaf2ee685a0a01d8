import { useEffect, useState } from 'preact/hooks';
import { listStudies, type StudyInList } from '../../application/study/list-studies';
import { study } from '../../i18n/en/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { studyStandard } from '../../i18n/en/study-standard';
import { useApp } from '../app';
import { routeHash } from '../route';
import { useLogChanges } from '../use-log-changes';
import { keptDraft } from './kept-draft';
import { momentWords, toldMoment } from './moment-words';
import { StandardsList } from './standards-list';
import { PAPER_STUDY, STANDARD_DATA } from './study-places';
import { useStudyFigures } from './use-study-figures';
import { useTimeUnit } from './use-time-unit';

const words = study.list;

/** The studies of this tablet, newest first. */
export function StudyList() {
  const app = useApp();
  const { bench } = app;
  const [studies, setStudies] = useState<StudyInList[] | 'reading' | 'failed'>('reading');
  const changes = useLogChanges();

  useEffect(() => {
    let isCurrent = true;
    listStudies(bench).then(
      (found) => isCurrent && setStudies(found),
      () => isCurrent && setStudies('failed'),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, changes]);

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
        <>
          <StudyLines studies={studies} />
          <StandardsList studies={studies} />
        </>
      )}
      <div class="row">
        <button type="button" class="button" onClick={() => app.go('study', STANDARD_DATA)}>
          {studyStandard.list.data}
        </button>
        <button type="button" class="button" onClick={() => app.go('study', PAPER_STUDY)}>
          {studyStandard.list.paper}
        </button>
      </div>
    </div>
  );
}

function StudyLines({ studies }: { studies: readonly StudyInList[] }) {
  const { isDemo } = useApp();
  const figures = useStudyFigures(studies);
  const { said } = useTimeUnit().time;
  // Nothing yet while the study is read; a dash where it has none.
  const timed = (ms: number | null | undefined) =>
    ms === null ? study.none : ms === undefined ? '' : said(ms);
  return (
    <table class="sheet study-list">
      <thead>
        <tr>
          <th scope="col">{words.name}</th>
          <th scope="col">{studySheet.answer.ofStudy}</th>
          <th scope="col">{words.cycles}</th>
          <th scope="col" class="words">
            {words.operator}
          </th>
          <th scope="col" class="words">
            {words.when}
          </th>
        </tr>
      </thead>
      <tbody>
        {studies.map(({ id, title, partCode, operator, startedAt, source, toldStart }) => {
          const found = figures.get(id);
          return (
            <tr key={id}>
              <td>
                <a href={routeHash({ screen: 'study', id, isDemo })} aria-label={title}>
                  {source === 'timed' ? partCode : title}
                </a>
                {source !== 'timed' && (
                  <span class="quiet small">
                    {' '}
                    {source === 'paper' ? studySheet.head.typed : words.imported}
                  </span>
                )}
              </td>
              <td>
                {found?.isOpen ? words.unfinished : timed(found?.standardTimeMs)}
                {found?.obstacle && !found.isOpen && (
                  <div class="small">{studyStandard.obstacles[found.obstacle]}</div>
                )}
              </td>
              <td>{found && studySheet.head.cyclesWhole(found.cycles, found.wholeCycles)}</td>
              <td class="words">{operator}</td>
              <td class="words">{toldStart === '' ? momentWords(startedAt) : toldMoment(toldStart)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
