import './study-paper.css';
import './study-print.css';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import { OpenStudySheet } from './open-study-sheet';
import { useStudyInView } from './use-study-in-view';

const saidInstead = { opening: words.opening, unknown: words.unknown, unread: words.unread };

/** A study that was timed or came from a table: its summary sheet and its observation sheet. */
export function StudySheet({ id }: { id: string }) {
  const { go } = useApp();
  const { study, take } = useStudyInView(id);
  return (
    <div class="page study-paper">
      <div class="row spread">
        <h1>{words.title}</h1>
        <button type="button" class="button no-print" onClick={() => go('study')}>
          {words.back}
        </button>
      </div>
      {typeof study === 'string' ? (
        <p class="quiet" role="status">
          {saidInstead[study]}
        </p>
      ) : (
        <OpenStudySheet study={study} onRecord={take} />
      )}
    </div>
  );
}
