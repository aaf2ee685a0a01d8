import { useState } from 'preact/hooks';
import { noticeWords as words } from '../../i18n/en/notices';
import { useApp } from '../app';
import { DemoGuide } from './demo-guide';
import { UntoldRelease } from './untold-release';

/** Whatever is not as always, a strip each; most days there is none, so none is brought. */
export function Notices({ takeUpdate }: { takeUpdate: (() => void) | null }) {
  const app = useApp();
  return (
    <>
      {app.isDemo && (
        <>
          <div class="demo-strip">
            <strong>{words.demo}</strong>
            <button type="button" class="button" onClick={app.leaveDemo}>
              {words.leaveDemo}
            </button>
          </div>
          <DemoGuide />
        </>
      )}
      {app.isOutdated ? <OutdatedNotice /> : app.isReadOnly && <ReadOnlyNotice />}
      {app.upkeep.value.missing > 0 && app.route.value.screen !== 'records' && <MissingNotice />}
      {takeUpdate ? <UpdateNotice take={takeUpdate} /> : app.untold.value && <UntoldRelease />}
    </>
  );
}

/** Another tab writes. Taking over is asked twice, in the same place. */
function ReadOnlyNotice() {
  const app = useApp();
  const [isAsked, setAsked] = useState(false);
  return (
    <div class="notice-strip" role="status">
      {isAsked ? words.takeOverAsk : words.readOnly}
      <button type="button" class="button" onClick={() => (isAsked ? app.takeOver() : setAsked(true))}>
        {isAsked ? words.takeOverYes : words.takeOver}
      </button>
    </div>
  );
}

/** A newer release changed the database: what this page would write there, it could not read. */
function OutdatedNotice() {
  const { unsaved } = useApp().bench.saving.value;
  return (
    <div class="notice-strip" role="alert">
      <span>
        {words.outdated} {unsaved > 0 && words.outdatedInReserve}
      </span>
      <button type="button" class="button" onClick={() => location.reload()}>
        {words.loadAgain}
      </button>
    </div>
  );
}

/** The log came back with less than it had. */
function MissingNotice() {
  const { upkeep, go } = useApp();
  return (
    <div class="notice-strip" role="alert">
      {words.missing(upkeep.value.missing)}
      <button type="button" class="button" onClick={() => go('records')}>
        {words.restore}
      </button>
    </div>
  );
}

/** Offered only while nothing is timed; until then it says nothing at all. */
function UpdateNotice({ take }: { take: () => void }) {
  const { bench } = useApp();
  const isTiming = bench.turn.value?.status === 'running' || bench.turn.value?.status === 'stopped';
  if (isTiming || bench.study.value?.status === 'open') return null;
  return (
    <div class="notice-strip" role="status">
      {words.updateWaits}
      <button type="button" class="button" onClick={take}>
        {words.updateTake}
      </button>
    </div>
  );
}

const inWords: Readonly<Record<string, string>> = {
  'no answer': words.noAnswer,
  TimeoutError: words.noAnswer,
  QuotaExceededError: words.full,
  NotReadableError: words.notOpen,
  VersionError: words.ofNewer,
};

/** What stands against saving, in words where it has a plain name; else as the storage said it. */
export function SavingProblem({ problem }: { problem: string }) {
  return <>({inWords[problem.split(':')[0]!] ?? problem})</>;
}
