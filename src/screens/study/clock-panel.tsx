import { useState } from 'preact/hooks';
import { checkClock } from '../../application/study/check-clock';
import type { LogRecord } from '../../domain/records/log-record';
import type { Study } from '../../domain/study/study';
import { studyClock } from '../../domain/study/study-clock';
import { studyReduce } from '../../i18n/en/study-reduce';
import { useApp } from '../app';
import { type ClockReading, clockOf } from './clock-reading';
import { percentOf } from './percent-of';
import { TextField } from './text-field';
import type { TimeWords } from './time-words';

const words = studyReduce.clock;

interface Props {
  readonly study: Study;
  readonly time: TimeWords;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

/** The check-time box of the form: what was recorded against what a clock says. */
export function ClockPanel({ study, time, onRecord }: Props) {
  const { isReadOnly } = useApp();
  const [isTyping, setIsTyping] = useState(false);
  const clock = studyClock(study);
  if (!clock) return <p class="quiet small">{words.none}</p>;
  const lines: [string, string][] = [
    [words.elapsed, time.said(clock.elapsedMs)],
    [words.before, time.said(clock.beforeMs)],
    [words.after, time.said(clock.afterMs)],
    [words.effective, time.said(clock.effectiveMs)],
    [words.ineffective, time.said(clock.ineffectiveMs)],
    [words.unaccounted, words.unaccountedIs(time.said(clock.unaccounted), percentOf(clock.errorShare))],
  ];
  return (
    <section class="stack">
      <table class="sheet study-clock">
        <caption>{words.title}</caption>
        <tbody>
          {lines.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class={clock.usable ? '' : 'fault'}>
        {clock.usable ? words.good : words.bad(percentOf(clock.errorShare))}{' '}
        <span class="quiet small">{clock.isTyped ? words.byShop : words.byTablet}</span>
      </p>
      <p class="quiet small">{words.formula}</p>
      {isTyping ? (
        <ClockFields study={study} onRecord={onRecord} onClose={() => setIsTyping(false)} />
      ) : (
        <div class="no-print">
          <button type="button" class="button" disabled={isReadOnly} onClick={() => setIsTyping(true)}>
            {words.type}
          </button>
        </div>
      )}
    </section>
  );
}

function ClockFields({ study, onRecord, onClose }: Omit<Props, 'time'> & { onClose: () => void }) {
  const { bench } = useApp();
  const [typed, setTyped] = useState<ClockReading>({ started: '', finished: '', before: '', after: '' });
  const [isFault, setIsFault] = useState(false);
  const put = (part: Partial<ClockReading>) => {
    setTyped({ ...typed, ...part });
    setIsFault(false);
  };
  const keep = () => {
    const clock = clockOf(typed);
    setIsFault(clock === null);
    if (!clock) return;
    onRecord(checkClock(bench, study, clock));
    onClose();
  };
  return (
    <div class="stack no-print">
      <div class="row study-terms">
        <TextField
          label={words.started}
          value={typed.started}
          narrow
          onInput={(started) => put({ started })}
        />
        <TextField
          label={words.finished}
          value={typed.finished}
          narrow
          onInput={(finished) => put({ finished })}
        />
        <TextField
          label={words.beforeMin}
          value={typed.before}
          mode="decimal"
          narrow
          onInput={(before) => put({ before })}
        />
        <TextField
          label={words.afterMin}
          value={typed.after}
          mode="decimal"
          narrow
          onInput={(after) => put({ after })}
        />
      </div>
      {isFault && (
        <p class="fault" role="alert">
          {words.fault}
        </p>
      )}
      <div class="row">
        <button type="button" class="button strong" onClick={keep}>
          {words.keep}
        </button>
        <button type="button" class="button" onClick={onClose}>
          {words.leave}
        </button>
      </div>
    </div>
  );
}
