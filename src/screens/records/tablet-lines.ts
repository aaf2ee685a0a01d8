import type { TabletState } from '../../application/records/check-tablet';
import { COARSE_STEP_MS } from '../../domain/records/coarse-clock';
import { copiesWords } from '../../i18n/en/copies';
import { firstSteps } from '../../i18n/en/first-steps';
import { recordsWords } from '../../i18n/en/records';
import { selfCheckWords as words } from '../../i18n/en/self-check';
import { cautionWords } from '../../i18n/en/storage-cautions';
import { formatAge } from '../../i18n/format-age';
import { formatSize } from '../../i18n/format-size';
import { LITTLE_BYTES } from '../little-room';

/** One thing that was looked at: what was found, whether that is fine, and what to do where it is not. */
export interface TabletLine {
  readonly name: string;
  readonly found: string;
  readonly state: 'fine' | 'look' | 'unknown';
  readonly todo: string;
}

/** A person sees a tap as saved at once up to here; both are what taps are held to. Milliseconds. */
const HALF_MS = 50;
const LONGEST_MS = 250;

interface Around {
  readonly copies: 0 | 1 | 2;
  readonly isDemo: boolean;
}

/** What was found on the tablet, a line each. The demo shop needs no copy, so it has no line about one. */
export function tabletLines(state: TabletState, { copies, isDemo }: Around): TabletLine[] {
  const { kept } = recordsWords;
  const lasting = state.isLasting === null ? 'unknown' : state.isLasting ? 'yes' : 'no';
  const lines = [
    judged(
      words.names.clock,
      words.clock(state.clockStepMs),
      state.clockStepMs <= COARSE_STEP_MS,
      words.todo.clock,
    ),
    savingLine(state.saving),
    judged(kept.rows.copies, kept.copies[copies], copies > 0, words.todo.copies),
    state.isForgetfulTab
      ? judged(kept.rows.lasting, kept.lasting.forgetful, false, '')
      : judged(kept.rows.lasting, kept.lasting[lasting], state.isLasting, words.todo.lasting),
    roomLine(state.roomBytes),
    judged(words.names.screen, words.screen[state.screen], state.screen === 'kept', words.todo.screen),
    installedLine(state.installation),
    judged(
      words.names.offline,
      state.isOffline ? words.offline : words.notOffline,
      state.isOffline,
      words.todo.offline,
    ),
  ];
  return [...lines, ...(isDemo ? [] : [copyLine(state.copy)]), recordsLine(state.records)];
}

/** Null: neither well nor ill, and nothing to be done. */
function judged(name: string, found: string, isFine: boolean | null, todo: string): TabletLine {
  const state = isFine === null ? 'unknown' : isFine ? 'fine' : 'look';
  return { name, found, state, todo: state === 'look' ? todo : '' };
}

function savingLine(saving: TabletState['saving']): TabletLine {
  const { names, todo } = words;
  if (!saving) return judged(names.saving, words.notMeasured, null, '');
  const { medianMs, longestMs, writes } = saving;
  const isFine = medianMs <= HALF_MS && longestMs <= LONGEST_MS;
  return judged(names.saving, words.saving(medianMs, longestMs, writes), isFine, todo.saving);
}

function installedLine(way: TabletState['installation']): TabletLine {
  const { why, menu } = firstSteps.install;
  const found = way === 'installed' ? words.yes : words.inTab;
  // The browser's own offer is a button below the lines.
  const todo = { installed: '', offered: why, menu, share: cautionWords.forgetful }[way];
  return judged(words.names.installed, found, way === 'installed', todo);
}

function roomLine(bytes: number | null): TabletLine {
  const { kept } = recordsWords;
  if (bytes === null) return judged(kept.rows.room, kept.noRoom, null, '');
  const size = formatSize(bytes);
  const isFine = bytes >= LITTLE_BYTES;
  return judged(kept.rows.room, isFine ? size : kept.littleRoom(size), isFine, '');
}

function copyLine(copy: TabletState['copy']): TabletLine {
  const { keep } = copiesWords;
  if (!copy) return judged(words.names.copy, words.unread, null, '');
  const found = copy.isCopied
    ? `${keep.age(formatAge(copy.ageMs))} ${keep.since(copy.recordsSince)}`
    : copy.recordsSince === 0
      ? copiesWords.records(0)
      : `${keep.none} ${keep.notYet(copy.recordsSince)}`;
  // Whoever checks the tablet hears of it before the frame would ask for one.
  const isFine = !copy.isDue && (copy.isCopied || copy.recordsSince === 0);
  return judged(words.names.copy, found, isFine, words.todo.copy);
}

function recordsLine(records: TabletState['records']): TabletLine {
  const { check } = copiesWords;
  if (!records) return judged(words.names.records, words.unread, false, words.todo.records);
  const { count, devices, breakCount } = records;
  const sound = count === 0 ? copiesWords.records(0) : check.sound(count, devices);
  const found = breakCount === 0 ? sound : check.broken(count, breakCount);
  return judged(words.names.records, found, breakCount === 0, words.todo.records);
}
