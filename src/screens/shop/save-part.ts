import type { Bench } from '../../application/bench';
import { definePart } from '../../application/shop/define-part';
import { describePart } from '../../application/shop/describe-part';
import { setTapping } from '../../application/shop/set-tapping';
import { setTarget } from '../../application/shop/set-target';
import type { Tapping } from '../../domain/records/turn-fact';
import { isSameCode } from '../../domain/shop/known-code';
import { readTargetTime } from '../../domain/shop/read-target-time';
import type { Part } from '../../domain/shop/shop';
import { shop } from '../../i18n/en/shop';
import { shownTarget } from './shown-target';

const words = shop.form;

/** What a person typed about a part. */
export interface PartTyped {
  readonly code: string;
  readonly name: string;
  /** Null while nobody has touched it: it stands as it stands, whatever a study has made of it meanwhile. */
  readonly target: string | null;
  /** The target is what calendar and demand leave for a part. */
  readonly isTakt?: boolean;
  /** Left out while nobody has touched it. */
  readonly tapping?: Tapping;
}

/**
 * Takes all of what was typed about a part, or nothing of it. What did not change is not recorded, so a target
 * that is a standard time stays one, to the millisecond, when only the name is mended.
 *
 * @returns one sentence when nothing was taken, an empty text when all was
 */
export function savePart(bench: Bench, part: Part | null, typed: PartTyped): string {
  const code = typed.code.trim();
  const name = typed.name.trim();
  if (code === '') return words.codeMissing;
  const taken = bench.shop.value.parts.find(
    (other) => other.id !== part?.id && !other.retired && isSameCode(other.code, code),
  );
  if (taken) return words.codeTaken(taken.code);
  const standingMs = part?.targetMs ?? null;
  const target = typed.target ?? shownTarget(standingMs);
  const read = readTargetTime(target);
  if (!read.ok && read.fault !== 'empty') return words.faults[read.fault];

  const typedMs = read.ok ? read.targetMs : null;
  const targetMs = target.trim() === shownTarget(standingMs) ? standingMs : typedMs;
  const id = part?.id ?? definePart(bench, code, name);
  if (part && (part.code !== code || part.name !== name)) describePart(bench, id, code, name);
  const isTakt = typed.isTakt === true && targetMs !== null;
  if (targetMs !== standingMs || (isTakt && part?.targetSource !== 'takt')) {
    setTarget(bench, id, targetMs, { source: isTakt ? 'takt' : 'typed' });
  }
  if (typed.tapping) setTapping(bench, id, typed.tapping);
  return '';
}
