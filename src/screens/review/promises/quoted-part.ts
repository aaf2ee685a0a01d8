import { readTargetTime } from '../../../domain/shop/read-target-time';
import type { Part } from '../../../domain/shop/shop';

/** What is quoted for: a part of the shop, or a size that it has no part for. */
export interface QuotedPart {
  /** Empty for a size. */
  readonly id: string;
  readonly code: string;
  readonly standardMs: number;
  readonly standardHalfMs: number;
  readonly source: 'typed' | 'standard' | 'size';
  readonly revision: number | null;
  readonly study: string | null;
}

/** What is typed about a size. */
export interface SizeTyped {
  readonly code: string;
  readonly time: string;
  readonly half: string;
}

/** The choice that no part's id can be. */
export const ANOTHER_SIZE = 'another size';

export function partQuoted({ id, code, targetMs, targetSource, targetStudy, methods }: Part): QuotedPart {
  return {
    id,
    code,
    standardMs: targetMs!,
    standardHalfMs: 0,
    source: targetSource === 'standard' || targetSource === 'past' ? 'standard' : 'typed',
    revision: methods.at(-1)?.revision ?? null,
    study: targetStudy,
  };
}

/** Null until it has a name and a time that can be read. */
export function sizeQuoted({ code, time, half }: SizeTyped): QuotedPart | null {
  const [standard, off] = [readTargetTime(time), readTargetTime(half)];
  const isOffRead = off.ok || half.trim() === '';
  if (code.trim() === '' || !standard.ok || !isOffRead) return null;
  return {
    id: '',
    code: code.trim(),
    standardMs: standard.targetMs,
    standardHalfMs: off.ok ? off.targetMs : 0,
    source: 'size',
    revision: null,
    study: null,
  };
}
