import { later } from '../records/later';
import type { LogRecord } from '../records/log-record';
import { placeOnTimeline } from '../records/place-on-timeline';
import { recordKey } from '../records/record-key';
import type { Stamp } from '../records/stamp';
import type { AnswerFact, CorrectionFact, PartInHand, TurnFact } from '../records/turn-fact';
import { withoutUndone } from '../records/without-undone';
import { foldAnyTurn } from './fold-any-turn';
import type { LedgerSpan, Turn } from './turn';

/** What stood before a correction, or after it. */
export type CorrectedState =
  | { readonly what: 'parts'; readonly parts: readonly (PartInHand & { readonly count: number })[] }
  | { readonly what: 'person'; readonly person: string }
  | { readonly what: 'time'; readonly spans: readonly LedgerSpan[] }
  | { readonly what: 'count'; readonly done: number; readonly counted: number }
  /** Written down beside the taps; null before anybody counted. */
  | { readonly what: 'by-hand'; readonly parts: number | null };

/**
 * A turn that was written down afterwards, a count beside the taps, and what somebody said of a stop or took back
 * afterwards are shown like an answer.
 */
type ShownFact = AnswerFact | CorrectionFact | Extract<TurnFact, { readonly kind: ShownKind }>;
type ShownKind = 'parts-counted' | 'turn-started' | 'stoppage-explained' | 'undone';

/** One answer or correction, as it can be shown to whoever it concerns. */
export interface Correction {
  readonly key: string;
  readonly kind: ShownFact['kind'];
  readonly at: Stamp;
  /** When what it is about happened; null for the turn as a whole. */
  readonly about: Stamp | null;
  /** Code of who made it; empty where it was said at the station. */
  readonly by: string;
  /** In the words of who made it; empty for an answer, which is its own reason. */
  readonly why: string;
  readonly before: CorrectedState;
  readonly after: CorrectedState;
  /** It holds: nobody took it back. */
  readonly isStanding: boolean;
}

/**
 * Every answer and correction of a turn in the order in which they were made: who, when, why, before, after.
 * Before and after are read from the turn as it stood without it and with it, so that neither can be made up.
 *
 * @throws {RangeError} foldTurn requires a stream that begins with a turn
 */
export function correctionHistory(records: readonly LogRecord[]): Correction[] {
  const standing = new Set(withoutUndone(placeOnTimeline(records)).map(({ record }) => record));
  // What a tap took back at once was never said.
  const takenBack = new Set(
    records.map(({ fact }) => (fact.kind === 'undone' && fact.by !== undefined ? fact.of : '')),
  );
  return records.flatMap((record, place) => {
    const { fact } = record;
    const key = recordKey(record);
    const isShown = standing.has(record) || takenBack.has(key) || fact.kind === 'undone';
    if (!isCorrection(fact) || !isShown) return [];
    const of = fact.kind === 'undone' ? records.find((each) => recordKey(each) === fact.of)?.fact : fact;
    if (!of || !isCorrection(of)) return [];
    const state = stateOf(of);
    const entered = fact.kind === 'turn-started' ? fact.enteredLater : undefined;
    return {
      key,
      kind: fact.kind,
      at: entered?.at ?? record.stamp,
      about: aboutOf(of, records),
      by: entered?.by ?? ('by' in fact ? (fact.by ?? '') : ''),
      why: entered?.why ?? ('why' in fact ? fact.why : 'cause' in fact ? fact.cause : ''),
      before:
        place === 0 ? { what: 'count', done: 0, counted: 0 } : state(foldAnyTurn(records.slice(0, place))),
      after: state(foldAnyTurn(records.slice(0, place + 1))),
      isStanding: standing.has(record),
    };
  });
}

const kinds: ReadonlySet<string> = new Set<ShownFact['kind']>([
  'gap-explained',
  'change-explained',
  'tap-counted',
  'tap-left-out',
  'break-answered',
  'cycle-judged',
  'part-confirmed',
  'person-confirmed',
  'part-recoded',
  'person-corrected',
  'time-reclassified',
  'part-set-aside',
  'part-taken-back',
  'parts-counted',
  'turn-withdrawn',
]);

function isCorrection(fact: LogRecord['fact']): fact is ShownFact {
  if (fact.kind === 'stoppage-explained' || fact.kind === 'undone') return fact.by !== undefined;
  return kinds.has(fact.kind) || (fact.kind === 'turn-started' && fact.enteredLater !== undefined);
}

/** The moment of the tap, the part or the stretch that was put right. */
function aboutOf(fact: ShownFact, records: readonly LogRecord[]): Stamp | null {
  const start = records[0]!.stamp;
  if (fact.kind === 'turn-started') return start;
  if ('fromMs' in fact && fact.fromMs !== undefined) return later(start, fact.fromMs);
  const named = 'partDone' in fact ? [fact.partDone].flat()[0] : keyIn(fact);
  // Of several parts for one tap, the tap.
  const key = named?.split('/')[0];
  return records.find((record) => recordKey(record) === key)?.stamp ?? null;
}

function keyIn(fact: ShownFact): string | undefined {
  if ('gap' in fact) return fact.gap;
  if ('tap' in fact) return fact.tap;
  if ('stoppage' in fact) return fact.stoppage;
  return 'change' in fact ? fact.change : undefined;
}

/** How to read what a correction is about from a turn. */
function stateOf(fact: ShownFact): (turn: Turn) => CorrectedState {
  switch (fact.kind) {
    case 'part-recoded':
      return ({ cycles }) => ({ what: 'parts', parts: distinctParts(cycles, new Set(fact.partDone)) });
    case 'part-confirmed':
      return ({ cycles }) => ({ what: 'parts', parts: distinctParts(cycles, new Set([fact.partDone])) });
    case 'parts-counted':
      return ({ countedParts }) => ({ what: 'by-hand', parts: countedParts });
    case 'person-corrected': {
      const { fromMs = 0, toMs = Number.POSITIVE_INFINITY } = fact;
      return ({ people }) => ({
        what: 'person',
        person: people
          .filter((span) => span.fromMs < toMs && span.toMs > fromMs)
          .map(({ person }) => person)
          .join(', '),
      });
    }
    case 'person-confirmed':
      return ({ person }) => ({ what: 'person', person });
    case 'break-answered':
    case 'time-reclassified':
      return ({ ledger }) => ({ what: 'time', spans: clipped(ledger, fact.fromMs, fact.toMs) });
    case 'stoppage-explained':
      return ({ ledger, stoppages, lastAtMs }) => {
        const stop = stoppages.find(({ key }) => key === fact.stoppage);
        return { what: 'time', spans: stop ? clipped(ledger, stop.fromMs, stop.toMs ?? lastAtMs) : [] };
      };
    case 'gap-explained':
      return (turn) => ({ what: 'time', spans: spansOfGap(turn, fact.gap) });
    case 'change-explained':
      return ({ ledger, changes }) => {
        const stretch = changes.find(({ key }) => key === fact.change);
        return { what: 'time', spans: stretch ? clipped(ledger, stretch.fromMs, stretch.toMs) : [] };
      };
    default:
      return ({ cycles }) => ({
        what: 'count',
        done: cycles.length,
        counted: cycles.filter(({ isCounted }) => isCounted).length,
      });
  }
}

function distinctParts(
  cycles: Turn['cycles'],
  keys: ReadonlySet<string>,
): (PartInHand & { readonly count: number })[] {
  const parts = new Map<string, PartInHand & { readonly count: number }>();
  for (const { key, part, partCode, targetMs } of cycles) {
    // Several parts for one tap are recoded together.
    if (!keys.has(key) && !keys.has(key.split('/')[0]!)) continue;
    parts.set(part, { part, partCode, targetMs, count: (parts.get(part)?.count ?? 0) + 1 });
  }
  return [...parts.values()];
}

function clipped(ledger: readonly LedgerSpan[], fromMs: number, toMs: number): LedgerSpan[] {
  return ledger
    .filter((span) => span.fromMs < toMs && span.toMs > fromMs)
    .map((span) => ({ ...span, fromMs: Math.max(span.fromMs, fromMs), toMs: Math.min(span.toMs, toMs) }));
}

function spansOfGap({ ledger, gaps }: Turn, key: string): LedgerSpan[] {
  const gap = gaps.find((each) => each.key === key);
  return gap ? clipped(ledger, gap.fromMs, gap.toMs) : [];
}
