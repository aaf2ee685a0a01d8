import { elapsedMs } from '../../domain/records/elapsed-ms';
import type { Study } from '../../domain/study/study';
import { study as words } from '../../i18n/en/study';
import { decimalMinutes } from '../../i18n/format-duration';
import { useNow } from '../use-now';

/** The running watch, the time of what is in hand, and the cycle. Null before the first tap. */
export function WatchHead({ study }: { study: Study | null }) {
  const apart = study?.watch.aside ?? null;
  return (
    <dl class="study-watch">
      <div class="study-watch-main">
        <dt class="small">
          {words.observe.watch}, {words.minutes}
        </dt>
        <dd class="number">{study ? <Running study={study} what="watch" /> : decimalMinutes(0)}</dd>
      </div>
      <div>
        <dt class="small">{apart ? words.observe.apart : words.observe.own}</dt>
        <dd class="number">{study ? <Running study={study} what="own" /> : decimalMinutes(0)}</dd>
      </div>
      <div>
        <dt class="small">{words.observe.cycle}</dt>
        <dd class="number">{study?.watch.cycle ?? 1}</dd>
      </div>
    </dl>
  );
}

/** Ticks alone; what it shows is computed from stamps, never counted. */
function Running({ study, what }: { study: Study; what: 'watch' | 'own' }) {
  const { lastStamp, lastAtMs, aside, beganAtMs, apartMs } = study.watch;
  const watchMs = lastAtMs + elapsedMs(lastStamp, useNow().value);
  if (what === 'watch') return <>{decimalMinutes(watchMs)}</>;
  return <>{decimalMinutes(watchMs - (aside ? aside.beganAtMs : beganAtMs + apartMs))}</>;
}
