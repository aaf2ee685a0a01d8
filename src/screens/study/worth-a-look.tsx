import type { FlaggedReading } from '../../domain/study/flag-readings';
import { studySheet } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import type { TimeWords } from './time-words';

const words = studySheet.look;

interface Props {
  readonly flagged: readonly FlaggedReading[];
  readonly time: TimeWords;
  readonly onOpen: (id: string) => void;
  /** For the one cause that is seen already: the page was loaded again inside it. */
  readonly onLeaveOut: (id: string) => void;
}

/** Readings that deserve a look. Each stays in its mean until a person names a cause. */
export function WorthALook({ flagged, time, onOpen, onLeaveOut }: Props) {
  const { isReadOnly } = useApp();
  if (flagged.length === 0) return null;
  return (
    <section class="panel stack" aria-labelledby="study-look">
      <h3 id="study-look">{words.title}</h3>
      <ul class="study-look">
        {flagged.map(({ reading: { id, row }, why }) => (
          <li key={id} class="row spread">
            <span>
              {words.why[why === 'quick' && row.work === 'machine' ? 'quickRun' : why](
                row.element,
                row.cycle,
                time.said(row.observedMs ?? 0),
              )}
            </span>
            <span class="row no-print">
              {why === 'reloaded' && (
                <button type="button" class="button" disabled={isReadOnly} onClick={() => onLeaveOut(id)}>
                  {words.leaveOut}
                </button>
              )}
              <button type="button" class="button" onClick={() => onOpen(id)}>
                {words.open}
              </button>
            </span>
          </li>
        ))}
      </ul>
      <p class="quiet small">{words.note}</p>
    </section>
  );
}
