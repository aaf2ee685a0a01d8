import type { TurnSpan } from '../../domain/turn/turn-span';

/** The calendar day on which a turn began, in the tablet's zone of now. */
export function dayOfTurn({ fromWallMs }: TurnSpan, offsetMin: number): string {
  return new Date(fromWallMs + offsetMin * 60_000).toISOString().slice(0, 10);
}
