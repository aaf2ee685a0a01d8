import { LONGEST_TARGET_MS, SHORTEST_TARGET_MS } from './target-limits';

/** What a person typed for a target, understood or not. */
export type TargetTyped =
  | { readonly ok: true; readonly targetMs: number }
  | { readonly ok: false; readonly fault: TargetFault };

export type TargetFault = 'empty' | 'not-a-time' | 'over-59' | 'too-short' | 'too-long';

/**
 * Reads a target as a shop writes it: `1:48` is minutes and seconds, `1:05:30` hours as well, `0:07.4` tenths
 * too; `1.8` and `1,8` are decimal minutes. Anything else is no time; nothing is guessed.
 *
 * 1 decimal minute is 60,000 milliseconds; the answer is in whole milliseconds.
 *
 * @example
 * readTargetTime('1,8') // => { ok: true, targetMs: 108000 }
 */
export function readTargetTime(typed: string): TargetTyped {
  const text = typed.trim();
  if (text === '') return { ok: false, fault: 'empty' };
  const clock = /^(?:(\d{1,2}):)?(\d{1,4}):(\d\d)(?:[.,](\d))?$/.exec(text);
  const decimal = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(text);
  if (!clock && !decimal) return { ok: false, fault: 'not-a-time' };
  if (clock) {
    const [hours, minutes, seconds] = [clock[1] ?? '0', clock[2]!, clock[3]!].map(Number) as [
      number,
      number,
      number,
    ];
    if (seconds > 59 || (clock[1] !== undefined && minutes > 59)) return { ok: false, fault: 'over-59' };
    const tenths = Number(clock[4] ?? 0);
    return withinLimits(((hours * 60 + minutes) * 60 + seconds) * 1_000 + tenths * 100);
  }
  return withinLimits(Math.round(Number(text.replace(',', '.')) * 60_000));
}

function withinLimits(targetMs: number): TargetTyped {
  if (targetMs < SHORTEST_TARGET_MS) return { ok: false, fault: 'too-short' };
  if (targetMs > LONGEST_TARGET_MS) return { ok: false, fault: 'too-long' };
  return { ok: true, targetMs };
}
