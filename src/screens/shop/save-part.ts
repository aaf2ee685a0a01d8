import type { Bench } from '../../application/bench';
import { definePart } from '../../application/shop/define-part';
import { describePart } from '../../application/shop/describe-part';
import { setTarget } from '../../application/shop/set-target';
import { readTargetTime } from '../../domain/shop/read-target-time';
import type { Part } from '../../domain/shop/shop';
import { shop } from '../../i18n/en/shop';

const words = shop.form;

/** What a person typed about a part. */
export interface PartTyped {
  readonly code: string;
  readonly name: string;
  readonly target: string;
}

/**
 * Takes all of what was typed about a part, or nothing of it. What did not change is not recorded, so a target
 * that is a standard time stays one when only the name is mended.
 *
 * @returns one sentence when nothing was taken, an empty text when all was
 */
export function savePart(bench: Bench, part: Part | null, typed: PartTyped): string {
  const code = typed.code.trim();
  const name = typed.name.trim();
  if (code === '') return words.codeMissing;
  const isTaken = bench.shop.value.parts.some(
    (other) => other.id !== part?.id && !other.retired && other.code === code,
  );
  if (isTaken) return words.codeTaken(code);
  const read = readTargetTime(typed.target);
  if (!read.ok && read.fault !== 'empty') return words.faults[read.fault];

  const targetMs = read.ok ? read.targetMs : null;
  const id = part?.id ?? definePart(bench, code, name);
  if (part && (part.code !== code || part.name !== name)) describePart(bench, id, code, name);
  if (targetMs !== (part?.targetMs ?? null)) setTarget(bench, id, targetMs);
  return '';
}
