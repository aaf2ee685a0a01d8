import { useEffect } from 'preact/hooks';
import type { BackupTools } from '../../application/backup/backup-tools';
import { settleMissing } from '../../application/backup/count-missing';
import type { BackupSource } from '../../application/ports/backup-format';
import { copiesWords } from '../../i18n/en/copies';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';

const words = copiesWords.missing;

interface Props {
  readonly copying: () => Promise<BackupTools>;
  readonly look: (source: BackupSource, name: string) => void;
  readonly isOff: boolean;
}

/** The log has lost records: the fullest copy inside the tablet is looked into at once, one tap from being taken in. */
export function MissingRecords({ copying, look, isOff }: Props) {
  const { upkeep, reopen } = useApp();
  useEffect(() => {
    if (isOff) return;
    copying().then(async ({ snapshots }) => {
      const kept = (await snapshots?.list().catch(() => [])) ?? [];
      const fullest = [...kept].sort((a, b) => b.records - a.records)[0];
      if (snapshots && fullest) look(await snapshots.read(fullest), formatDay(fullest.day));
    });
  }, [isOff]);
  const leave = async () => {
    settleMissing(await copying());
    await reopen();
  };
  return (
    <div class="fault" role="alert">
      <p>{words.text(upkeep.value.missing)}</p>
      <div class="row">
        <button type="button" class="button plain" disabled={isOff} onClick={leave}>
          {words.leave}
        </button>
      </div>
    </div>
  );
}
