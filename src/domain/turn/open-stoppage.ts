import { NOT_STATED, type Stoppage } from './turn';
import type { TurnRemarks } from './turn-remarks';

/** A stoppage as it begins, with the reason that was said for it whenever that was. */
export function openStoppage({ explanations }: TurnRemarks, key: string, fromMs: number): Stoppage {
  const why = explanations.get(key);
  return {
    key,
    fromMs,
    toMs: null,
    reason: why?.reason ?? NOT_STATED,
    label: why?.label ?? '',
    category: why?.category ?? 'stoppage',
    ofPart: why?.ofPart ?? '',
  };
}
