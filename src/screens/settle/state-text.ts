import type { CorrectedState } from '../../domain/turn/correction-history';
import type { LedgerSpan } from '../../domain/turn/turn';
import { wholeSeconds } from '../../domain/turn/whole-seconds';
import { ledger } from '../../i18n/en/ledger';
import { settle as words } from '../../i18n/en/settle';
import { clockFace } from '../../i18n/format-duration';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { reasonText } from '../pace/reason-text';

/** Two states that read alike are said to be alike; a person is never named. */
export function afterText(before: CorrectedState, after: CorrectedState): string {
  if (before.what === 'person' && after.what === 'person' && before.person !== after.person) {
    return words.states.another;
  }
  const text = stateText(after);
  return text === stateText(before) ? words.states.same : text;
}

export function stateText(state: CorrectedState): string {
  switch (state.what) {
    case 'count':
      return words.states.count(state.done, state.counted);
    case 'by-hand':
      return state.parts === null ? words.states.nothing : words.states.byHand(state.parts);
    case 'person':
      return words.states.person;
    case 'parts':
      return state.parts
        .map(({ count, partCode, targetMs }) =>
          [`${count} × ${partCode}`, ...(targetMs === null ? [] : [roundedClockFace(targetMs)])].join(' '),
        )
        .join(', ');
    case 'time':
      return state.spans
        .filter((span) => wholeSeconds(span) > 0)
        .map((span) => `${whatIn(span)} ${clockFace(wholeSeconds(span) * 1_000)}`)
        .join(', ');
  }
}

/** The reason where there is one: of two stoppages a category says nothing. */
function whatIn({ category, reason, label }: LedgerSpan): string {
  return category === 'cycle' || reason === '' ? ledger.names[category] : reasonText({ reason, label });
}
