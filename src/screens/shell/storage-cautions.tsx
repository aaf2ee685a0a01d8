import { useEffect, useState } from 'preact/hooks';
import { cautionWords as words } from '../../i18n/en/storage-cautions';
import { formatSize } from '../../i18n/format-size';
import { useApp } from '../app';

/** A long study with its notes is 1 MB; below this much, other things on the tablet may fill the rest. */
const LITTLE_BYTES = 50_000_000;

/** Said before a study, while something can be done about it. Nothing where nothing is amiss. */
export function StorageCautions() {
  const { lastingStorage, isDemo } = useApp();
  const [roomBytes, setRoom] = useState<number | null>(null);
  const [isForgetful, setForgetful] = useState(false);
  useEffect(() => {
    lastingStorage().then(async (storage) => {
      setForgetful(storage.isForgetfulTab());
      setRoom(await storage.roomBytes());
    });
  }, [lastingStorage]);
  if (isDemo) return null;
  const isLittle = roomBytes !== null && roomBytes < LITTLE_BYTES;
  return (
    <>
      {isLittle && (
        <p class="fault" role="status">
          {words.little(formatSize(roomBytes))}
        </p>
      )}
      {isForgetful && (
        <p class="fault" role="status">
          {words.forgetful}
        </p>
      )}
    </>
  );
}
