import { useEffect, useState } from 'preact/hooks';
import type { BackupTools } from '../../application/backup/backup-tools';
import type { BackupSource } from '../../application/ports/backup-format';
import type { Snapshot } from '../../application/ports/snapshot-store';
import { copiesWords } from '../../i18n/en/copies';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';

const words = copiesWords.snapshots;

interface Props {
  readonly copying: () => Promise<BackupTools>;
  readonly look: (source: BackupSource, name: string) => void;
  readonly isOff: boolean;
}

/** The copies the tablet keeps for itself, newest first. */
export function SnapshotList({ copying, look, isOff }: Props) {
  const { upkeep } = useApp();
  const taken = upkeep.value.snapshot;
  const [kept, setKept] = useState<readonly Snapshot[] | 'impossible'>([]);
  useEffect(() => {
    copying().then(async ({ snapshots }) => {
      setKept(snapshots ? (await snapshots.list().catch(() => [])).reverse() : 'impossible');
    });
  }, [copying, taken]);

  const open = async (snapshot: Snapshot) => {
    const { snapshots } = await copying();
    if (snapshots) look(await snapshots.read(snapshot), formatDay(snapshot.day));
  };
  const collapsed = taken?.ok === false && taken.reason === 'count-collapsed' ? taken : null;
  return (
    <div class="records-way">
      <h3>{words.title}</h3>
      <p class="quiet">{words.text}</p>
      {collapsed && (
        <p class="fault" role="alert">
          {words.collapsed(collapsed.records, collapsed.before.records, formatDay(collapsed.before.day))}
        </p>
      )}
      {taken?.ok === false && taken.reason === 'not-written' && (
        <p class="fault">{words.failed(taken.problem)}</p>
      )}
      {kept === 'impossible' && <p>{words.impossible}</p>}
      {kept !== 'impossible' && kept.length === 0 && <p>{words.none}</p>}
      {kept !== 'impossible' && kept.length > 0 && (
        <ul class="records-snapshots">
          {kept.map((snapshot) => (
            <li key={snapshot.generation} class="row spread">
              <span class="number">
                {formatDay(snapshot.day)} <span class="quiet">{words.line(snapshot.records)}</span>
              </span>
              <button
                type="button"
                class="button plain"
                disabled={isOff}
                aria-label={words.lookAt(formatDay(snapshot.day))}
                onClick={() => open(snapshot)}
              >
                {words.look}
              </button>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
