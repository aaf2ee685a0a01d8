import { useState } from 'preact/hooks';
import type { BackupTools } from '../../application/backup/backup-tools';
import type { BackupSource } from '../../application/ports/backup-format';
import { sharedCodes } from '../../domain/shop/shared-codes';
import { copiesWords } from '../../i18n/en/copies';
import { useApp } from '../app';
import { PinAsk } from '../latch/pin-ask';
import { useLatch } from '../latch/use-latch';
import { CheckedCopy } from './checked-copy';
import { MissingRecords } from './missing-records';
import { RestoreOutcomeNote } from './restore-outcome-note';
import { restored } from './restored';
import { SnapshotList } from './snapshot-list';

const words = copiesWords.restore;

/** A copy from outside, or one of the tablet's own, looked into and then taken in or left. */
export function RestoreSection({ copying }: { copying: () => Promise<BackupTools> }) {
  const { bench, isReadOnly, upkeep } = useApp();
  const isShut = useLatch();
  const [chosen, setChosen] = useState<{ source: BackupSource; name: string; at: number } | null>(null);
  const twins = sharedCodes(bench.shop.value.parts);
  const isOff = isReadOnly || isShut;

  const look = (source: BackupSource, name: string) => {
    restored.value = null;
    setChosen({ source, name, at: (chosen?.at ?? 0) + 1 });
  };
  return (
    <section class="stack records-restore" aria-labelledby="records-restore-title">
      <h2 id="records-restore-title">{words.title}</h2>
      <p class="quiet">{words.text}</p>
      {upkeep.value.missing > 0 && <MissingRecords copying={copying} look={look} isOff={isOff} />}
      <PinAsk />
      <div class="row">
        <label class={`button records-file ${isOff ? 'records-off' : ''}`}>
          {words.choose}
          <input
            type="file"
            class="visually-hidden"
            disabled={isOff}
            onChange={({ currentTarget: input }) => {
              const file = input.files?.[0];
              if (file) look(file, file.name);
              // The same file may be chosen again.
              input.value = '';
            }}
          />
        </label>
      </div>
      {chosen && !isOff && (
        <CheckedCopy key={chosen.at} {...chosen} copying={copying} leave={() => setChosen(null)} />
      )}
      <RestoreOutcomeNote />
      {twins.length > 0 && (
        <p class="fault" role="alert">
          {words.sharedCodes([...new Set(twins.map(({ code }) => code))].join(', '))}
        </p>
      )}
      <SnapshotList copying={copying} look={look} isOff={isOff} />
    </section>
  );
}
