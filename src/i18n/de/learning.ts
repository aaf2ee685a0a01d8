import type { learning as english } from '../en/learning';

/** Words about people who are new to a job. */
export const learning: typeof english = {
  title: 'Anlernen',
  note: 'Beim Anlernen zählen Teile als fertig, stehen in keinem Mittelwert und zeigen keinen Stand.',
  line: (code, count) => `${code}: ${count === 1 ? 'das erste Teil' : `die ersten ${count} Teile`}`,
  end: 'Beenden',
  endOf: (code) => `Anlernen von ${code} beenden`,
  who: 'Wer wird angelernt?',
  howMany: 'Für wie viele Teile?',
  set: 'Anlernen eintragen',
  choose: 'Wählen, wer und für wie viele Teile. Nichts wurde geändert.',
};
