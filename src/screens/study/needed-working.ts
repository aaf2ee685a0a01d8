import type { ElementSummary } from '../../domain/study/summarise-study';
import { studyWorking } from '../../i18n/en/study-working';
import { formatNumber } from '../../i18n/format-number';
import type { TimeWords } from './time-words';
import type { Working } from './working';

const words = studyWorking.needed;

/** The forms in which a firm may count the readings it needs. */
export const requiredForms = ['t', 'tPilot', 'z', 'ilo'] as const;
export type RequiredForm = (typeof requiredForms)[number];

/** The working of the readings needed, in the form chosen. */
export function neededWorking({
  summary,
  time,
  form,
}: {
  summary: ElementSummary;
  time: TimeWords;
  form: RequiredForm;
}): Working {
  const { observedMeanMs, observedDeviationMs, required } = summary;
  const numbers =
    required === null
      ? []
      : [
          words.spread(time.fine(observedMeanMs ?? 0), time.fine(observedDeviationMs ?? 0)),
          form === 't'
            ? words.iterated(required.t)
            : words.raw(formatNumber(required.raw[form], 2), required[form]),
        ];
  return { ...words[form], what: words.what, numbers, leftOut: null };
}
