import type { FlaggedReading } from '../../domain/study/flag-readings';
import { studySheet } from '../../i18n/en/study-sheet';
import type { TimeWords } from './time-words';

const words = studySheet.look;

interface Props {
  readonly flagged: readonly FlaggedReading[];
  readonly time: TimeWords;
  readonly onOpen: (id: string) => void;
}

/** Readings that a test points at. Each stays in its mean until a person names a cause. */
export function WorthALook({ flagged, time, onOpen }: Props) {
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
            <button type="button" class="button no-print" onClick={() => onOpen(id)}>
              {words.open}
            </button>
          </li>
        ))}
      </ul>
      <p class="quiet small">{words.note}</p>
    </section>
  );
}
