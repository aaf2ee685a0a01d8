import type { PartInHand, StoppedTime, TurnFact } from '../domain/records/turn-fact';
import type { WallBreak } from '../domain/shop/shift-calendar';
import type { FieldsByKind } from './backup-fields';
import {
  count,
  exactly,
  type Fields,
  listOf,
  notNegative,
  number,
  oneOf,
  optional,
  orNull,
  positive,
  type Shape,
  text,
  truth,
} from './backup-shape';
import { enteredLaterShape } from './entered-later-shape';

export const stopCategory = oneOf('set-up', 'stoppage', 'rework', 'planned-break', 'called-away');
const correctedCategory = oneOf('cycle', 'set-up', 'stoppage', 'rework', 'planned-break', 'called-away');
/** Left out where it was said at the station. */
const by = optional(text);
const stoppedTime = exactly<StoppedTime>({ category: stopCategory, reason: text, label: text });
const workOrStopped: Shape = (value) => (value === 'work' ? null : stoppedTime(value));
const wallBreak = exactly<WallBreak>({
  fromWallMs: number,
  toWallMs: number,
  isAttended: optional(truth),
});

const partInHand: Fields<PartInHand> = {
  part: text,
  partCode: text,
  targetMs: orNull(positive),
  partsPerTap: optional(count),
  targetSource: optional(oneOf('typed', 'standard', 'takt')),
  tapping: optional(oneOf('start-stop', 'elements')),
  elements: optional(listOf(text)),
};

/** What a fact of a turn holds. */
export const turnFacts: FieldsByKind<TurnFact> = {
  'turn-started': {
    starts: oneOf('turn'),
    person: text,
    ...partInHand,
    enteredLater: optional(enteredLaterShape),
    clockStepMs: optional(positive),
  },
  'part-done': { ...partInHand, touchMs: optional(notNegative) },
  'part-changed': { ...partInHand, before: optional(oneOf('asked')) },
  'part-judged': {
    partDone: text,
    outcome: oneOf('good', 'rework', 'scrap'),
    defect: optional(text),
    stoppage: optional(text),
  },
  'part-begun': {},
  'element-done': { element: text },
  stopped: {},
  resumed: {},
  'stoppage-explained': {
    stoppage: text,
    reason: text,
    label: text,
    category: stopCategory,
    ofPart: optional(text),
    by,
    why: optional(text),
  },
  'stoppage-absorbed': { stoppage: text, absorbedMs: notNegative, by },
  'turn-ended': {},
  'turn-noted': { note: text },
  slept: { sleptMs: notNegative },
  'clock-set': { byMs: number },
  'clock-drifted': { byMs: number },
  'page-opened': { goneMs: optional(notNegative) },
  'gap-explained': { gap: text, as: workOrStopped, by },
  'change-explained': {
    change: text,
    as: oneOf('set-up', 'next-part', 'part-before', 'left-out'),
    by,
  },
  'tap-counted': { tap: text, by },
  'tap-left-out': { tap: text, by },
  'cycle-judged': { partDone: text, as: oneOf('one-part', 'two-parts', 'interrupted', 'first-off'), by },
  'part-confirmed': { partDone: text, by },
  'person-confirmed': { gap: text, by },
  'part-recoded': { partDone: listOf(text), ...partInHand, by: text, why: text },
  'person-corrected': {
    person: text,
    fromMs: optional(notNegative),
    toMs: optional(notNegative),
    by: text,
    why: text,
  },
  'time-reclassified': {
    fromMs: notNegative,
    toMs: notNegative,
    category: correctedCategory,
    reason: text,
    label: text,
    by: text,
    why: text,
    isAtStation: optional(truth),
  },
  'part-set-aside': { partDone: text, cause: text, by: text },
  'part-taken-back': { partDone: text, by: text },
  'turn-withdrawn': { by: text, why: text },
  'person-changed': { person: text },
  'learning-noted': { person: text, parts: notNegative },
  'parts-wanted': { parts: orNull(count) },
  'parts-counted': { count: notNegative, by },
  'shift-planned': { breaks: listOf(wallBreak), endsWallMs: orNull(number) },
  'break-answered': {
    partDone: text,
    fromMs: notNegative,
    toMs: notNegative,
    as: oneOf('break', 'work'),
    by,
  },
  undone: { of: text, by },
};
