import { useState } from 'preact/hooks';
import { issueStandard } from '../../../application/shop/issue-standard';
import { setTarget } from '../../../application/shop/set-target';
import type { StudyOfPart } from '../../../application/study/read-studies-of-part';
import { localDay } from '../../../domain/day/local-day';
import type { StandardRevision } from '../../../domain/shop/fold-standards';
import type { Part } from '../../../domain/shop/shop';
import type { AllowanceTerms } from '../../../domain/study/allowance-terms';
import type { StudiesAnalysis } from '../../../domain/study/analyse-studies';
import { precisionMissed } from '../../../domain/study/precision-missed';
import { ratingsJudged } from '../../../domain/study/ratings-judged';
import { studyStandard as words } from '../../../i18n/en/study-standard';
import { useApp } from '../../app';
import { PinAsk } from '../../latch/pin-ask';
import { useLatch } from '../../latch/use-latch';
import { percentOf } from '../percent-of';
import { ratingWords } from '../rating-note';
import { TextField } from '../text-field';

interface Props {
  readonly part: Part;
  readonly analysis: StudiesAnalysis;
  readonly chosen: readonly StudyOfPart[];
  readonly terms: AllowanceTerms;
  readonly standards: readonly StandardRevision[];
}

/** Makes a revision of the standard, with the day it holds from and the day it is looked at again. */
export function IssueForm({ part, analysis, chosen, terms, standards }: Props) {
  const { bench, isReadOnly } = useApp();
  const isShut = useLatch();
  const [today] = useState(() => localDay(bench.clock.now()));
  const [inForceOn, setInForceOn] = useState(today);
  const [checkBy, setCheckBy] = useState(() => yearAfter(today));
  const [issuedBy, setIssuedBy] = useState(chosen[0]?.study.heading?.observer ?? '');
  /** Null until it is said. */
  const [saidTarget, setSaidTarget] = useState<boolean | null>(null);
  const [isMissKnown, setIsMissKnown] = useState(false);
  const ratings = ratingsJudged(chosen.flatMap(({ study }) => study.readings));
  const missed = precisionMissed(analysis, ratings);
  // The same for the first standard and for a further one: what is not ticked leaves the floor with the old time.
  const isTarget = saidTarget ?? missed === null;
  const { standardTimeMs, normalTimeMs } = analysis.together;
  const hasTrouble = chosen.some(({ obstacles }) => obstacles.some((obstacle) => obstacle !== 'unseen'));
  if (standardTimeMs === null || normalTimeMs === null) return <p class="fault">{words.incomplete}</p>;
  if (hasTrouble) return <p class="fault">{words.blocked}</p>;

  const last = standards.at(-1);
  // The button stands where it stood: a second tap on it must not issue the same once more.
  const isIssued =
    last !== undefined && isSame(last, { standardTimeMs, terms, studies: chosen.map(({ id }) => id) });
  const isWhole = inForceOn !== '' && checkBy > inForceOn && issuedBy.trim() !== '';
  const method = part.methods.at(-1);
  const issue = () => {
    issueStandard(bench, part.id, {
      standardTimeMs,
      normalTimeMs,
      terms,
      methodRevision: chosen[0]?.methodRevision ?? method?.revision ?? 0,
      conditions: chosen[0]?.study.heading?.conditions ?? method?.conditions ?? '',
      studies: chosen.map(({ id }) => id),
      cycles: Math.max(1, analysis.cycles),
      operators: analysis.operators,
      days: analysis.days,
      uncertainty: analysis.uncertainty,
      inForceOn,
      checkBy,
      issuedBy: issuedBy.trim(),
    });
    if (isTarget) setTarget(bench, part.id, standardTimeMs, { source: 'standard', study: chosen[0]!.id });
  };
  const day = (label: string, value: string, set: (value: string) => void) => (
    <label class="field study-narrow">
      <span>{label}</span>
      <input type="date" value={value} onInput={(event) => set(event.currentTarget.value)} />
    </label>
  );
  return (
    <section class="panel stack no-print">
      <div class="row study-terms">
        {day(words.inForce, inForceOn, setInForceOn)}
        {day(words.checkBy, checkBy, setCheckBy)}
        <TextField label={words.issuedBy} value={issuedBy} narrow onInput={setIssuedBy} />
      </div>
      {!isWhole && <p class="fault">{words.dayFault}</p>}
      {isIssued && <p role="status">{words.issued(standards.length)}</p>}
      {missed !== null && !isIssued && (
        <label class="study-told">
          <input
            type="checkbox"
            checked={isMissKnown}
            onChange={(event) => setIsMissKnown(event.currentTarget.checked)}
          />
          <span>
            {missed === 'wide'
              ? words.wide(percentOf(analysis.sampling!))
              : missed === 'unknown'
                ? words.thin(analysis.cycles)
                : ratingWords(ratings)}
            : {words.allTheSame}
          </span>
        </label>
      )}
      <PinAsk />
      <div class="row">
        <button
          type="button"
          class="button strong"
          disabled={!isWhole || isIssued || (missed !== null && !isMissKnown) || isReadOnly || isShut}
          onClick={issue}
        >
          {words.issue(standards.length + 1)}
        </button>
        <label class="study-told">
          <input
            type="checkbox"
            checked={isTarget}
            onChange={(event) => setSaidTarget(event.currentTarget.checked)}
          />
          <span>{words.setTarget}</span>
        </label>
        {isTarget && inForceOn > today && <p>{words.targetNow(inForceOn)}</p>}
      </div>
    </section>
  );
}

type Issued = Pick<StandardRevision, 'standardTimeMs' | 'terms' | 'studies'>;

function isSame(one: Issued, other: Issued): boolean {
  const text = ({ standardTimeMs, terms, studies }: Issued) =>
    JSON.stringify([standardTimeMs, terms, studies]);
  return text(one) === text(other);
}

/** The 29th of February comes back as the 1st of March. */
function yearAfter(day: string): string {
  const next = new Date(`${day}T00:00:00Z`);
  next.setUTCFullYear(next.getUTCFullYear() + 1);
  return next.toISOString().slice(0, 10);
}
