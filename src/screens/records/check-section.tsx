import { useState } from 'preact/hooks';
import { problemOf } from '../../application/backup/problem-of';
import { checkRecords, type RecordFault, type RecordsCheck } from '../../application/records/check-records';
import { copiesWords } from '../../i18n/en/copies';
import { useApp } from '../app';
import { BroughtIntoView } from './brought-into-view';

const words = copiesWords.check;

/** The chain of checksums, followed through the whole log while one watches. */
export function CheckSection() {
  const { bench, copying, upkeep } = useApp();
  const [followed, setFollowed] = useState<number | null>(null);
  const [found, setFound] = useState<RecordsCheck | null>(null);
  const [problem, setProblem] = useState('');
  const recent = upkeep.value.breaks;

  const go = async () => {
    setFound(null);
    setProblem('');
    setFollowed(0);
    try {
      setFound(await checkRecords(bench.log, setFollowed, (await copying?.())?.format.takes));
    } catch (error) {
      setProblem(words.failed(problemOf(error)));
    }
    setFollowed(null);
  };
  return (
    <section class="stack records-check-all" aria-labelledby="records-check-title">
      <h2 id="records-check-title">{words.title}</h2>
      <p class="quiet">{words.text}</p>
      {recent.length > 0 && !found && (
        <div class="fault" role="alert">
          <p>{words.recent}</p>
          <Breaks breaks={recent.slice(0, 5)} more={Math.max(0, recent.length - 5)} />
        </div>
      )}
      <div class="row">
        <button type="button" class="button" disabled={followed !== null} onClick={go}>
          {words.go}
        </button>
      </div>
      {followed !== null && <p class="number">{words.going(followed)}</p>}
      <div role="status">
        {(problem || found) && (
          <BroughtIntoView answer={found ?? problem}>
            {problem && <p class="fault">{problem}</p>}
            {found?.breakCount === 0 && (
              <p class="records-told">{words.sound(found.records, found.devices)}</p>
            )}
            {found && found.breakCount > 0 && (
              <div class="fault" role="alert">
                <p>
                  <strong>{words.broken(found.records, found.breakCount)}</strong>
                </p>
                <Breaks breaks={found.breaks} more={found.breakCount - found.breaks.length} />
              </div>
            )}
          </BroughtIntoView>
        )}
      </div>
    </section>
  );
}

function Breaks({ breaks, more }: { breaks: readonly RecordFault[]; more: number }) {
  return (
    <ul>
      {breaks.map(({ device, sequence, why }) => (
        <li key={`${device} ${sequence} ${why}`}>{words[why](device, sequence)}</li>
      ))}
      {more > 0 && <li>{words.more(more)}</li>}
    </ul>
  );
}
