import { pace } from '../../domain/turn/pace';
import type { Turn } from '../../domain/turn/turn';
import { pace as words } from '../../i18n/en/pace';
import { clockFace } from '../../i18n/format-duration';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { useNow } from '../use-now';

/** Where the target stands on the bar: what goes past it still has room. */
const TARGET_AT = 0.7;

/** This part's time against its target. Past the target the bar goes on hatched, and says so. */
export function TargetBar({ turn }: { turn: Turn }) {
  const workedMs = pace(turn, useNow().value).partWorkedMs;
  const { targetMs: eachMs, partsPerTap = 1, targetSource } = turn.inHand;
  const targetMs = eachMs === null ? null : eachMs * partsPerTap;
  if (targetMs === null) return <p class="pace-target">{words.noTarget}</p>;
  const share = Math.min(workedMs / targetMs, 1 / TARGET_AT) * TARGET_AT;
  const overMs = workedMs - targetMs;
  const target = `${words.targetWords[targetSource ?? 'none']} ${roundedClockFace(targetMs)}`;
  // Who learns may know the target, and is not measured by it.
  if (turn.isLearning) return <p class="pace-target number">{target}</p>;
  return (
    <div>
      <p class="pace-target number">
        {target}
        {overMs >= 1_000 && (
          <strong class="pace-over">
            {words.over} {clockFace(overMs)}
          </strong>
        )}
      </p>
      <div class="pace-bar" aria-hidden="true">
        {/* Uncovered and not made wider: five times a second nothing has to be laid out. */}
        <div class="pace-bar-in" style={uncovered(0, Math.min(share, TARGET_AT))} />
        <div class="pace-bar-over" style={uncovered(TARGET_AT, Math.max(share, TARGET_AT))} />
        <div class="pace-bar-mark" style={{ left: `${TARGET_AT * 100}%` }} />
      </div>
    </div>
  );
}

function uncovered(from: number, to: number) {
  return { clipPath: `inset(0 ${(1 - to) * 100}% 0 ${from * 100}%)` };
}
