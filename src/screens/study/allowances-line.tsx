import { useState } from 'preact/hooks';
import { setAllowances } from '../../application/study/set-allowances';
import type { LogRecord } from '../../domain/records/log-record';
import type { Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { studySheet as words } from '../../i18n/en/study-sheet';
import { formatNumber } from '../../i18n/format-number';
import { useApp } from '../app';
import { useLatch } from '../latch/use-latch';
import { draftOfTerms, termsOf } from './terms-draft';
import { TermsFields } from './terms-fields';

interface Props {
  readonly study: Study;
  readonly onRecord: (records: readonly LogRecord[]) => void;
}

/** The allowances of the study with their basis, and the way to set others. */
export function AllowancesLine({ study, onRecord }: Props) {
  const { bench, isReadOnly } = useApp();
  const isShut = useLatch();
  const { allowancePct, basis, machineAllowancePct, lines } = study.terms;
  const [draft, setDraft] = useState<ReturnType<typeof draftOfTerms> | null>(null);
  const terms = draft ? termsOf(draft) : null;
  const percent = (pct: number) => formatNumber(pct, Number.isInteger(pct) ? 0 : 2);

  if (!draft || isShut) {
    return (
      <tr>
        <th scope="row">{words.totals.allowances}</th>
        <td class="study-totals-terms">
          <span class="row study-totals-allowance">
            <span>
              {words.allowance(
                percent(allowancePct),
                allWords.terms.bases[basis],
                percent(machineAllowancePct),
              )}
              {lines && (
                <span class="small quiet study-allowance-lines">
                  {lines.map(({ name, pct }) => `${name} ${percent(pct)} %`).join(' + ')}
                </span>
              )}
            </span>
            <button
              type="button"
              class="button study-close"
              disabled={isReadOnly || isShut}
              onClick={() => setDraft(draftOfTerms(study.terms))}
            >
              {words.changeAllowances}
            </button>
          </span>
        </td>
      </tr>
    );
  }
  return (
    <tr>
      <td class="words study-totals-terms" colSpan={2}>
        <div class="stack">
          <TermsFields terms={draft} onChange={setDraft} />
          {!terms && (
            <p class="fault" role="alert">
              {allWords.faults.allowances}
            </p>
          )}
          <div class="row">
            <button
              type="button"
              class="button strong"
              disabled={!terms}
              onClick={() => {
                if (!terms) return;
                onRecord(setAllowances(bench, study, terms));
                setDraft(null);
              }}
            >
              {words.keepAllowances}
            </button>
            <button type="button" class="button" onClick={() => setDraft(null)}>
              {words.leaveAllowances}
            </button>
          </div>
        </div>
      </td>
    </tr>
  );
}
