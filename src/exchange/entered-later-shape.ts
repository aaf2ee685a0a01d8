import type { Stamp } from '../domain/records/stamp';
import type { EnteredLater, EnteredLine, EnteredStop } from '../domain/records/station-fact';
import {
  exactly,
  listOf,
  notNegative,
  number,
  numberThat,
  oneOf,
  optional,
  orNull,
  positive,
  text,
} from './backup-shape';

/** A day has no more, and a fold makes something of each. */
const MOST_PARTS = 100_000;
const parts = numberThat((value) => Number.isInteger(value) && value >= 0 && value <= MOST_PARTS);

/** What a turn that was written down afterwards must hold. */
export const enteredLaterShape = exactly<EnteredLater>({
  at: exactly<Stamp>({ run: text, monoMs: number, wallMs: number, zone: text, offsetMin: number }),
  by: text,
  why: text,
  lastedMs: notNegative,
  lines: listOf(
    exactly<EnteredLine>({
      part: text,
      partCode: text,
      targetMs: orNull(positive),
      partsPerTap: optional(positive),
      targetSource: optional(oneOf('typed', 'standard', 'takt')),
      tapping: optional(oneOf('start-stop', 'elements')),
      elements: optional(listOf(text)),
      done: parts,
      rework: parts,
      scrap: parts,
    }),
  ),
  stops: listOf(
    exactly<EnteredStop>({
      category: oneOf('set-up', 'stoppage', 'rework', 'planned-break', 'called-away'),
      reason: text,
      label: text,
      lostMs: notNegative,
      fromMs: optional(notNegative),
    }),
  ),
});
