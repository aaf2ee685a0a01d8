import { useState } from 'preact/hooks';
import { setTarget } from '../../application/shop/set-target';
import { LONGEST_TARGET_MS, SHORTEST_TARGET_MS } from '../../domain/shop/target-limits';
import type { Study } from '../../domain/study/study';
import { studySheet } from '../../i18n/en/study-sheet';
import { useApp } from '../app';
import { PinAsk } from '../latch/pin-ask';
import { useLatch } from '../latch/use-latch';
import type { TimeWords } from './time-words';

const words = studySheet.target;

interface Props {
  readonly study: Study;
  readonly standardTimeMs: number | null;
  /** An element of the method has no reading: its time is missing in the sum. */
  readonly isIncomplete: boolean;
  /** Its clock check holds and its work stood still. */
  readonly isUsable: boolean;
  readonly time: TimeWords;
}

/** Makes the standard time the part's target, after a question in its place. */
export function TargetPanel({ study, standardTimeMs, isIncomplete, isUsable, time }: Props) {
  const { bench, isReadOnly } = useApp();
  const isShut = useLatch();
  const [isAsked, setIsAsked] = useState(false);
  const code = study.heading?.partCode ?? study.readings[0]?.row.carried.part ?? '';
  const part = bench.shop.value.parts.find(
    ({ id, code: partCode, retired }) =>
      !retired && (study.heading ? id === study.heading.part : partCode === code),
  );
  const isOutside =
    standardTimeMs !== null && (standardTimeMs < SHORTEST_TARGET_MS || standardTimeMs > LONGEST_TARGET_MS);
  const obstacle = !part
    ? words.noPart
    : standardTimeMs === null || isIncomplete
      ? words.incomplete
      : !isUsable
        ? words.notUsable
        : isOutside
          ? words.outside
          : null;

  if (!part || standardTimeMs === null || obstacle !== null) return <p class="quiet">{obstacle}</p>;
  if (part.targetStudy === study.id && part.targetMs === Math.round(standardTimeMs)) {
    return <p role="status">{words.isSet}</p>;
  }
  const now = part.targetMs === null ? words.none : words.now(time.said(part.targetMs));
  if (!isAsked || isShut) {
    return (
      <div class="stack">
        <div class="row">
          <button
            type="button"
            class="button"
            disabled={isReadOnly || isShut}
            onClick={() => setIsAsked(true)}
          >
            {words.set}
          </button>
          <p class="quiet">{now}</p>
        </div>
        <PinAsk />
      </div>
    );
  }
  return (
    <div class="panel stack" role="status">
      <p>
        <strong>{words.question(part.code, time.said(standardTimeMs))}</strong> {now}
      </p>
      <p class="quiet small">
        {words.note} {studySheet.cautions[0]}
      </p>
      <div class="row">
        <button
          type="button"
          class="button strong"
          onClick={() => {
            setTarget(bench, part.id, standardTimeMs, { source: 'standard', study: study.id });
            setIsAsked(false);
          }}
        >
          {words.yes}
        </button>
        <button type="button" class="button" onClick={() => setIsAsked(false)}>
          {words.no}
        </button>
      </div>
    </div>
  );
}
