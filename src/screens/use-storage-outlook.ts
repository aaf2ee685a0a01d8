import { useEffect, useState } from 'preact/hooks';
import { useApp } from './app';
import { LITTLE_BYTES } from './little-room';

/** How much room is left for records, and whether this is a tab that forgets them. Null until it is known. */
export function useStorageOutlook(): {
  readonly roomBytes: number | null;
  readonly isLittle: boolean;
  readonly isForgetfulTab: boolean;
} | null {
  const { lastingStorage } = useApp();
  const [outlook, setOutlook] = useState<ReturnType<typeof useStorageOutlook>>(null);
  useEffect(() => {
    lastingStorage().then(async (storage) => {
      const roomBytes = await storage.roomBytes();
      const isLittle = roomBytes !== null && roomBytes < LITTLE_BYTES;
      setOutlook({ roomBytes, isLittle, isForgetfulTab: storage.isForgetfulTab() });
    });
  }, [lastingStorage]);
  return outlook;
}
