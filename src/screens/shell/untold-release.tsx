import { useState } from 'preact/hooks';
import { changeWords as words } from '../../i18n/en/changes';
import { useApp } from '../app';
import { ReleaseChanges } from './release-changes';

/** After an update, until somebody has answered it; never while something is timed. */
export function UntoldRelease() {
  const { bench, untold } = useApp();
  const [isAsked, setAsked] = useState(false);
  const turn = bench.turn.value;
  if ((turn !== null && turn.status !== 'ended') || bench.study.value?.status === 'open') return null;
  return (
    <>
      <div class="notice-strip" role="status">
        {words.updated}
        <span class="row">
          {!isAsked && (
            <button type="button" class="button" onClick={() => setAsked(true)}>
              {words.title}
            </button>
          )}
          <button type="button" class="button" onClick={() => untold.value?.()}>
            {words.close}
          </button>
        </span>
      </div>
      {isAsked && (
        <div class="notice-changes">
          <ReleaseChanges count={1} />
        </div>
      )}
    </>
  );
}
