/** Minutes from 07:00 between which work is planned: meeting, breaks, lunch and close-down are out. */
export const workBlocks = [
  { from: 5, to: 120 },
  { from: 130, to: 240 },
  { from: 270, to: 390 },
  { from: 400, to: 475 },
] as const;

/** The block that follows lunch, and with it the other operator. */
export const AFTERNOON_BLOCK = 2;
/** Minutes from 07:00 before which the morning's operator is at the station: the middle of lunch. */
const HAND_OVER = 255;
/** 15:00. */
export const SHIFT_END = 480;
export const DAYS = 20;
/** Doors go in racks in the first week, one by one from then on. */
export const BATCH_DAYS = 5;

export type DemoPerson = 'K7' | 'M2' | 'R4';
export const demoPeople: readonly DemoPerson[] = ['K7', 'M2', 'R4'];
const afternoonPeople: readonly DemoPerson[] = ['M2', 'R4', 'K7'];

/** Who is at the station on a day (from 0) at a minute from 07:00. */
export function personAt(day: number, minute: number): DemoPerson {
  return (minute < HAND_OVER ? demoPeople : afternoonPeople)[day % 3]!;
}

/** What is ordered on a day: shares of each code. */
export type Mix = Readonly<Record<'S' | 'M' | 'L' | 'T' | 'V', number>>;

export const normalMix: Mix = { S: 0.2, M: 0.35, L: 0.25, T: 0.12, V: 0.08 };
const hardMix: Mix = { S: 0.05, M: 0.15, L: 0.25, T: 0.3, V: 0.25 };
const easyMix: Mix = { S: 0.45, M: 0.35, L: 0.15, T: 0.05, V: 0 };

/** Two hard days and an easy one, so that a fair figure can show that it is fair. */
export function mixOf(day: number): Mix {
  if (day === 13 || day === 16) return hardMix;
  return day === 19 ? easyMix : normalMix;
}
