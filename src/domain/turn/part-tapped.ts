import type { Stamp } from '../records/stamp';
import type { PartInHand, PartOutcome } from '../records/turn-fact';

/** An element of a part that was tapped, and where it ended; milliseconds since the turn began. */
export interface Step {
  readonly element: string;
  readonly toMs: number;
}

/** A part as it was tapped, before anybody asks whether the tap was right. */
export interface PartTapped extends Pick<PartInHand, 'part' | 'partCode' | 'targetMs'> {
  readonly key: string;
  /** Parts that the tap stands for. */
  readonly partsPerTap: number;
  readonly doneAt: Stamp;
  readonly person: string;
  readonly isShared: boolean;
  readonly fromMs: number;
  readonly toMs: number;
  /** Its time where it was not worked from tap to tap; null otherwise. */
  readonly touchMs: number | null;
  readonly outcome: PartOutcome;
  readonly defect: string;
  /** Where its elements ended, when they were tapped; the last one ends with the part. */
  readonly steps: readonly Step[];
  /** Without a stoppage or a gap from tap to tap. */
  readonly isUnbroken: boolean;
  /** Not tapped at all, but written down afterwards. */
  readonly isEntered: boolean;
  /** A gap inside that nobody explained. */
  readonly hasOpenGap: boolean;
}
