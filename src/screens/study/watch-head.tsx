import { elapsedMs } from '../../domain/records/elapsed-ms';
import type { Study } from '../../domain/study/study';
import { decimalMinutes } from '../../i18n/decimal-time';
import { study as words } from '../../i18n/en/study';
import { useNow } from '../use-now';

interface Props {
  readonly study: Study | null;
  readonly isSnapback: boolean;
  /** The system does not keep the screen on. */
  readonly maySleep?: boolean;
}

/**
 * The running watch, the time of what is in hand, and the cycle. Null before the first tap. In snapback the watch is
 * the element's own, so that comes first.
 */
export function WatchHead({ study, isSnapback, maySleep = false }: Props) {
  const apart = study?.watch.aside ?? null;
  const names = { watch: words.observe.watch, own: apart ? words.observe.apart : words.observe.own };
  const [main, other] = isSnapback ? (['own', 'watch'] as const) : (['watch', 'own'] as const);
  return (
    <dl class="study-watch">
      <div class="study-watch-main">
        <dt class="small">
          {names[main]}, {words.minutes}
          {maySleep && <strong> · {words.observe.screenMaySleep}</strong>}
        </dt>
        <dd class="number">{study ? <Running study={study} what={main} /> : decimalMinutes(0)}</dd>
      </div>
      <div>
        <dt class="small">{names[other]}</dt>
        <dd class="number">{study ? <Running study={study} what={other} /> : decimalMinutes(0)}</dd>
      </div>
      <div>
        <dt class="small">{words.observe.cycle}</dt>
        <dd class="number">
          {study?.watch.cycle ?? 1}
          {study?.heading?.plannedCycles !== undefined && (
            <span class="small quiet study-watch-planned">
              {' '}
              {plannedWords(study.watch.cycle, study.heading.plannedCycles)}
            </span>
          )}
        </dd>
      </div>
    </dl>
  );
}

function plannedWords(cycle: number, planned: number): string {
  return cycle > planned ? words.observe.pastPlanned(planned) : words.observe.ofPlanned(planned);
}

/** Ticks alone; what it shows is computed from stamps, never counted. */
function Running({ study, what }: { study: Study; what: 'watch' | 'own' }) {
  const { lastStamp, lastAtMs, aside, beganAtMs, apartMs, isHeld } = study.watch;
  const watchMs = lastAtMs + elapsedMs(lastStamp, useNow().value);
  if (what === 'watch') return <>{decimalMinutes(watchMs)}</>;
  if (isHeld) return <>{decimalMinutes(0)}</>;
  return <>{decimalMinutes(watchMs - (aside ? aside.beganAtMs : beganAtMs + apartMs))}</>;
}
