import { useEffect, useState } from 'preact/hooks';
import { recordsWords } from '../../i18n/en/records';
import { useApp } from '../app';
import { StorageCautions } from '../shell/storage-cautions';

const words = recordsWords.kept;

/** Whether the browser promised to keep the records, and a way to ask again where it did not. */
export function LastingPromise() {
  const { lastingStorage, copies } = useApp();
  const [isGranted, setGranted] = useState<boolean | null | 'asking'>('asking');
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
  return (
    <div class="stack" role="status">
      <p>
        {isGranted === 'asking' && words.lasting.asking}
        {isGranted === true && words.lasting.yes}
        {isGranted === false && words.lasting.no}
        {isGranted === null && words.lasting.unknown}
      </p>
      <StorageCautions />
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
