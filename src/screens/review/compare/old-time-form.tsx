import { useState } from 'preact/hooks';
import { timeOldMethod } from '../../../application/review/time-old-method';
import { readTargetTime } from '../../../domain/shop/read-target-time';
import { lessTime } from '../../../domain/weeks/less-time';
import { beforeAfterWords } from '../../../i18n/en/before-after';
import { formatNumber } from '../../../i18n/format-number';
import { roundedClockFace } from '../../../i18n/rounded-clock-face';
import { useApp } from '../../app';

const words = beforeAfterWords.old;

/** An old time as it is written down; what was typed is read back before it is kept. */
export function OldTimeForm({ isOpen }: { isOpen: boolean }) {
  const app = useApp();
  const parts = app.bench.shop.value.parts.filter(({ retired }) => !retired);
  const [part, setPart] = useState(parts[0]?.id ?? '');
  const [typed, setTyped] = useState('');
  const [newTyped, setNewTyped] = useState('');
  const [source, setSource] = useState('');
  const [by, setBy] = useState('');
  const [before, after] = [readTargetTime(typed), readTargetTime(newTyped)];
  const isReady = before.ok && (after.ok || newTyped.trim() === '') && part !== '';
  const save = (event: Event) => {
    event.preventDefault();
    if (!before.ok) return;
    const both = after.ok ? { newPerPartMs: after.targetMs } : {};
    timeOldMethod(app.bench, { part, perPartMs: before.targetMs, ...both, source, by });
    setTyped('');
    setNewTyped('');
  };
  return (
    <details class="review-more no-print" open={isOpen}>
      <summary>
        <h3>{words.write}</h3>
      </summary>
      {parts.length === 0 ? (
        <div class="stack">
          <p>{words.noPart}</p>
          <div class="row">
            <button type="button" class="button strong" onClick={() => app.go('shop')}>
              {words.openShop}
            </button>
          </div>
        </div>
      ) : (
        <form class="stack review-form" onSubmit={save}>
          <label class="field">
            <span>{words.part}</span>
            <select value={part} onChange={(event) => setPart(event.currentTarget.value)}>
              {parts.map(({ id, code }) => (
                <option key={id} value={id}>
                  {code}
                </option>
              ))}
            </select>
          </label>
          <div class="review-dates">
            <label class="field">
              <span>{words.time}</span>
              <input value={typed} onInput={(event) => setTyped(event.currentTarget.value)} />
            </label>
            <label class="field">
              <span>{words.newTime}</span>
              <input value={newTyped} onInput={(event) => setNewTyped(event.currentTarget.value)} />
            </label>
          </div>
          {(typed !== '' || newTyped !== '') && <p role="status">{readBack(typed, newTyped)}</p>}
          <label class="field">
            <span>{words.source}</span>
            <input value={source} maxLength={120} onInput={(event) => setSource(event.currentTarget.value)} />
          </label>
          <label class="field">
            <span>{words.by}</span>
            <input value={by} maxLength={20} onInput={(event) => setBy(event.currentTarget.value)} />
          </label>
          <div class="row">
            <button type="submit" class="button strong" disabled={!isReady}>
              {words.save}
            </button>
          </div>
        </form>
      )}
    </details>
  );
}

/** What was typed, as it is understood: 300 alone is minutes, and five hours. */
function readBack(typed: string, newTyped: string): string {
  const [before, after] = [readTargetTime(typed), readTargetTime(newTyped)];
  if (!before.ok || (!after.ok && newTyped.trim() !== '')) return words.notATime;
  const old = roundedClockFace(before.targetMs);
  const isHours = Math.max(before.targetMs, after.ok ? after.targetMs : 0) >= 3_600_000;
  const hours = isHours ? ` ${words.hours}` : '';
  if (!after.ok) return `${words.understood(old)}${hours}`;
  const { lessShare, timesTheRate } = lessTime(before.targetMs, after.targetMs);
  const size = words.size(
    formatNumber(100 * Math.abs(lessShare)),
    lessShare >= 0 ? 'less' : 'more',
    formatNumber(timesTheRate, 2),
  );
  return `${words.understoodBoth(old, roundedClockFace(after.targetMs), size)}${hours}`;
}
