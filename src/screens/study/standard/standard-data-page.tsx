import '../study-paper.css';
import { useEffect, useState } from 'preact/hooks';
import { readSizedElements, type SizedElementsFound } from '../../../application/study/read-sized-elements';
import { studyData as words } from '../../../i18n/en/study-data';
import { studyStandard } from '../../../i18n/en/study-standard';
import { useApp } from '../../app';
import { useLogChanges } from '../../use-log-changes';
import { SizedElementSheet } from './sized-element-sheet';

/** Times for parts of any size, from the readings of parts of several. */
export function StandardDataPage() {
  const { bench, go } = useApp();
  const [found, setFound] = useState<SizedElementsFound | 'reading' | 'failed'>('reading');
  const [place, setPlace] = useState(0);
  const changes = useLogChanges();
  useEffect(() => {
    let isCurrent = true;
    readSizedElements(bench).then(
      (elements) => isCurrent && setFound(elements),
      () => isCurrent && setFound('failed'),
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, changes]);
  const chosen = typeof found === 'string' ? undefined : (found.elements[place] ?? found.elements[0]);
  return (
    <div class="page study-paper">
      <div class="row spread">
        <h1>{words.title}</h1>
        <button type="button" class="button no-print" onClick={() => go('study')}>
          {studyStandard.back}
        </button>
      </div>
      {typeof found === 'string' ? (
        <p class="quiet" role="status">
          {studyStandard[found]}
        </p>
      ) : (
        <>
          {found.elements.length === 0 && <p>{words.none}</p>}
          {found.elements.length > 1 && (
            <label class="field no-print">
              <span>{words.element}</span>
              <select value={place} onChange={(event) => setPlace(Number(event.currentTarget.value))}>
                {found.elements.map(({ element, driver }, index) => (
                  <option key={`${element} ${driver}`} value={index}>
                    {words.pair(element, driver)}
                  </option>
                ))}
              </select>
            </label>
          )}
          {chosen && (
            <SizedElementSheet
              key={`${chosen.element} ${chosen.driver}`}
              sized={chosen}
              studies={found.studies}
            />
          )}
        </>
      )}
    </div>
  );
}
