import { cautionWords as words } from '../../i18n/en/storage-cautions';
import { formatSize } from '../../i18n/format-size';
import { useApp } from '../app';
import { useStorageOutlook } from '../use-storage-outlook';

/** Said before a study, while something can be done about it. Nothing where nothing is amiss. */
export function StorageCautions() {
  const { isDemo } = useApp();
  const outlook = useStorageOutlook();
  if (isDemo || !outlook) return null;
  return (
    <>
      {outlook.isLittle && (
        <p class="fault" role="status">
          {words.little(formatSize(outlook.roomBytes ?? 0))}
        </p>
      )}
      {outlook.isForgetfulTab && (
        <p class="fault" role="status">
          {words.forgetful}
        </p>
      )}
    </>
  );
}
