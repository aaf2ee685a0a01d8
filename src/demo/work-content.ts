import type { DemoPart } from './demo-parts';
import type { SpreadTime } from './lognormal-time';

const time = (mean: number, cv: number): SpreadTime => ({ mean, cv });

/** Hand work of the invented shop: normal minutes and their coefficient of variation. */
export const handWork = {
  // One piece at a time.
  unload: time(0.1, 0.12),
  load: time(0.14, 0.12),
  walk: time(0.04, 0.1),
  place: time(0.09, 0.15),
  get: time(0.11, 0.18),
  rework: time(0.9, 0.35),
  setUp: time(2, 0.2),
  // Occasional.
  changeBlade: time(0.6, 0.25),
  exchangeTrolley: time(0.45, 0.25),
  emptyChipTray: time(0.9, 0.25),
  // In batches only.
  stack: time(0.07, 0.15),
  unloadAndStack: time(0.11, 0.12),
  getBored: time(0.1, 0.15),
  moveRack: time(1.2, 0.2),
};

/** Doors between two occurrences of what does not come with every door. */
export const doorsPerOccurrence = { changeBlade: 20, exchangeTrolley: 8, emptyChipTray: 40 };

/** Inspection takes longer with every hinge cup to gauge. */
export const inspecting = ({ hinges }: DemoPart) => time(0.16 + 0.03 * hinges, 0.14);

/** Cleaning up the edge banding takes longer with every metre of it. */
export const cleaningUp = ({ perimeter }: DemoPart) => time(0.08 + 0.105 * perimeter, 0.11);

/** Machine minutes to bore a door: machine-controlled, so it hardly varies. */
export const boringMinutes = ({ hinges, feed }: DemoPart) => 0.22 + (0.2 * hinges) / feed;
export const boringCv = 0.004;
