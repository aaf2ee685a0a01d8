import { useEffect, useState } from 'preact/hooks';
import { beginForeign } from '../../application/study/begin-foreign';
import { beginOccasional } from '../../application/study/begin-occasional';
import { endElement } from '../../application/study/end-element';
import { missBreakPoint } from '../../application/study/miss-break-point';
import type { Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { useApp } from '../app';
import { TimingButton } from '../timing-button';
import { BreakPointSurface } from './break-point-surface';
import { EndOfStudy } from './end-of-study';
import { LiveElementSheet } from './live-element-sheet';
import { ObserveFrame } from './observe-frame';
import { RatingPad } from './rating-pad';
import { WatchHead } from './watch-head';

const words = allWords.observe;

/** Continuous timing: one tap at each break point, eyes on the work. */
export function ObserveStudy({ study }: { study: Study }) {
  const { bench, screenAwake, isReadOnly } = useApp();
  const [rating, setRating] = useState(() => lastRating(study));
  useEffect(() => {
    screenAwake.keep();
    return () => {
      if (!bench.busy) screenAwake.release();
    };
  }, [bench, screenAwake]);

  const elements = study.heading?.elements ?? [];
  const { aside, elementIndex } = study.watch;
  const isForeign = aside !== null && aside.elementIndex === null;
  const isMachine = elements[aside?.elementIndex ?? elementIndex]?.work === 'machine';
  const isApart = aside !== null;
  return (
    <ObserveFrame
      title={words.title(study.title)}
      head={<WatchHead study={study} />}
      sheet={<LiveElementSheet elements={elements} readings={study.readings} watch={study.watch} />}
      pad={
        <RatingPad
          rating={rating}
          onRate={setRating}
          lock={isForeign ? 'foreign' : isMachine ? 'machine' : isReadOnly ? 'idle' : null}
        />
      }
      actions={
        <>
          <TimingButton
            class="button"
            disabled={isApart || isReadOnly}
            onTap={(at) => beginForeign(bench, at)}
          >
            {words.foreign}
          </TimingButton>
          <TimingButton class="button" disabled={isApart || isReadOnly} onTap={() => missBreakPoint(bench)}>
            {words.missed}
          </TimingButton>
          {elements.map(
            ({ name, elementClass }, index) =>
              elementClass === 'occasional' && (
                <TimingButton
                  key={index}
                  class="button study-occasional"
                  disabled={isApart || isReadOnly}
                  onTap={(at) => beginOccasional(bench, at, index + 1)}
                >
                  {name}
                </TimingButton>
              ),
          )}
        </>
      }
      surface={
        <BreakPointSurface
          study={study}
          disabled={isReadOnly}
          onTap={(at) => endElement(bench, at, rating)}
        />
      }
      ends={<EndOfStudy study={study} />}
    />
  );
}

/** The rating stands until it is changed: after a reload, too. */
function lastRating({ readings }: Study): number {
  const judged = readings.findLast(
    ({ row }) => row.work !== 'machine' && row.elementClass !== 'foreign' && row.observedMs !== null,
  );
  return judged?.row.ratingPct ?? 100;
}
