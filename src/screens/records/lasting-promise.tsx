import { useEffect, useState } from 'preact/hooks';
import { recordsWords } from '../../i18n/en/records';
import { useApp } from '../app';
import { useStorageOutlook } from '../use-storage-outlook';

const words = recordsWords.kept;

/** Whether the browser promised to keep the records, and a way to ask again where it did not. */
export function LastingPromise() {
  const { lastingStorage, copies } = useApp();
  const [isGranted, setGranted] = useState<boolean | null | 'asking'>('asking');
  const isForgetful = useStorageOutlook()?.isForgetfulTab ?? false;
  const [wasRefused, setRefused] = useState(false);
  useEffect(() => {
    lastingStorage()
      .then((storage) => storage.isGranted())
      .then(setGranted);
  }, [lastingStorage]);

  const ask = async () => {
    const answer = await (await lastingStorage()).ask();
    setGranted(answer);
    setRefused(answer === false);
  };
  const answered = isGranted === null ? 'unknown' : isGranted ? 'yes' : 'no';
  const said = isForgetful ? 'forgetful' : isGranted === 'asking' ? 'asking' : answered;
  return (
    <div class="stack" role="status">
      <p>{words.lasting[said]}</p>
      {isGranted === false && copies > 0 && (
        <div class="row">
          <button type="button" class="button" onClick={ask}>
            {words.ask}
          </button>
        </div>
      )}
      {wasRefused && <p class="small">{words.askedInVain}</p>}
    </div>
  );
}
