import type { StopReason } from '../domain/records/shop-fact';
import type { SpreadTime } from './lognormal-time';

/** Why work stands still in the invented shop. An empty label is worded by the tablet. */
export const stopReasons = {
  material: { id: 'material', label: '', category: 'stoppage' },
  machine: { id: 'machine', label: '', category: 'stoppage' },
  extraction: { id: 'extraction', label: 'Extraction clear-out', category: 'stoppage' },
  calledAway: { id: 'called-away', label: '', category: 'called-away' },
  setUp: { id: 'set-up', label: '', category: 'set-up' },
  planned: { id: 'break', label: '', category: 'planned-break' },
  quality: { id: 'quality', label: '', category: 'stoppage' },
} satisfies Record<string, StopReason>;

/** What stops the cell by chance. Minutes. */
export interface StopCause extends SpreadTime {
  /** Null: nobody said why. */
  readonly reason: StopReason | null;
  /** The machine stands; otherwise the operator does, and a door that is being bored is bored on. */
  readonly holdsMachine: boolean;
  /** Mean running time between two of them. */
  readonly every: number;
}

const cause = (
  reason: StopReason | null,
  holds: 'machine' | 'operator',
  every: number,
  mean: number,
  cv: number,
): StopCause => ({ reason, holdsMachine: holds === 'machine', every, mean, cv });

/** In the order in which chance asks them. */
export const stopCauses: readonly StopCause[] = [
  cause(stopReasons.machine, 'machine', 140, 3.2, 0.8),
  cause(stopReasons.material, 'operator', 160, 4.5, 0.6),
  cause(stopReasons.calledAway, 'operator', 200, 2.5, 0.7),
  cause(stopReasons.extraction, 'machine', 210, 2, 0.4),
  cause(stopReasons.quality, 'operator', 300, 2.8, 0.6),
  cause(null, 'operator', 400, 1.2, 0.7),
];

/** One stoppage that happened, in minutes. */
export interface DemoStop {
  readonly reason: StopReason | null;
  readonly holdsMachine: boolean;
  readonly minutes: number;
  /** How much of it cost no output, because the other of machine and operator worked on. */
  readonly absorbed?: number;
}
