import { useEffect } from 'preact/hooks';
import { endElement } from '../../application/study/end-element';
import type { Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { useApp } from '../app';
import { BreakPointSurface } from './break-point-surface';
import { EndOfStudy } from './end-of-study';
import { LiveElementSheet } from './live-element-sheet';
import { ObserveActions } from './observe-actions';
import { ObserveFrame } from './observe-frame';
import { RatingPad } from './rating-pad';
import { useRating } from './use-rating';
import { WatchHead } from './watch-head';

const words = allWords.observe;

/** Continuous timing: one tap at each break point, eyes on the work. */
export function ObserveStudy({ study }: { study: Study }) {
  const { bench, screenAwake, isReadOnly } = useApp();
  const { standing, judged, lock, rate, switchOver } = useRating(study);
  useEffect(() => {
    screenAwake.keep();
    return () => {
      if (!bench.busy) screenAwake.release();
    };
  }, [bench, screenAwake]);

  const elements = study.heading?.elements ?? [];
  return (
    <ObserveFrame
      title={words.title(study.title)}
      head={<WatchHead study={study} />}
      sheet={<LiveElementSheet elements={elements} readings={study.readings} watch={study.watch} />}
      pad={
        <RatingPad judged={judged} lock={lock} disabled={isReadOnly} onRate={rate} onSwitch={switchOver} />
      }
      actions={<ObserveActions elements={elements} watch={study.watch} />}
      surface={
        <BreakPointSurface
          study={study}
          disabled={isReadOnly}
          onTap={(at) => endElement(bench, at, standing)}
        />
      }
      ends={<EndOfStudy study={study} />}
    />
  );
}
