import type { ComponentProps } from 'preact';
import { useState } from 'preact/hooks';
import { beginOccasional } from '../../application/study/begin-occasional';
import { chooseElement } from '../../application/study/choose-element';
import { endElement } from '../../application/study/end-element';
import { endMachine } from '../../application/study/end-machine';
import { inHandOf, noteElement } from '../../application/study/note-element';
import { noteReading } from '../../application/study/note-reading';
import type { Stamp } from '../../domain/records/stamp';
import { nextStart } from '../../domain/study/machine-lane';
import { hasTwoLanes, type Reading, type Study } from '../../domain/study/study';
import { slipOf } from '../../domain/study/too-quick';
import { study as allWords } from '../../i18n/en/study';
import { useApp } from '../app';
import { useLearnedKeys } from '../keys/use-learned-keys';
import { useScreenAwake } from '../use-screen-awake';
import { BreakPointSurface } from './break-point-surface';
import { EndOfStudy } from './end-of-study';
import { LiveElementSheet } from './live-element-sheet';
import { MachineSurface } from './machine-surface';
import { ObserveActions } from './observe-actions';
import { ObserveFrame } from './observe-frame';
import { RatingPad } from './rating-pad';
import { RemarkLine } from './remark-line';
import { timeWords } from './time-words';
import { useRating } from './use-rating';
import { WatchHead } from './watch-head';

const words = allWords.observe;

/** Continuous timing: one tap at each break point, eyes on the work. */
export function ObserveStudy({ study }: { study: Study }) {
  const { bench, isReadOnly } = useApp();
  const { standing, isOwnNow, judged, lock, rate, switchOver } = useRating(study);
  const isAwake = useScreenAwake(study.status === 'open');
  const elements = study.heading?.elements ?? [];
  const isSnapback = study.heading?.timing === 'snapback';
  const isTwoLanes = study.heading?.lanes === 2 && hasTwoLanes(elements);
  const endInHand = (at: Stamp) => endElement(bench, at, standing, isOwnNow());
  const [remark, setRemark] = useState<Pick<
    ComponentProps<typeof RemarkLine>,
    'element' | 'cycle' | 'kept' | 'onKeep'
  > | null>(null);
  const remarkOnReading = ({ id, row }: Reading) =>
    setRemark({
      element: row.element,
      cycle: row.cycle,
      kept: row.carried.note ?? '',
      onKeep: (said) => noteReading(bench, study, id, said),
    });
  const remarkInHand = () => {
    // Nothing is in hand while the operator waits: the word is on what has just ended.
    const { isWaiting, merged } = study.watch;
    const ended = isWaiting && merged.length === 0 ? study.readings.at(-1) : undefined;
    if (ended) return remarkOnReading(ended);
    const on = inHandOf(study);
    const { aside, note } = study.watch;
    setRemark({
      element: elements[on.elementNo - 1]?.name ?? words.foreignElement,
      cycle: on.cycle,
      kept: (aside ?? { note }).note,
      onKeep: (said) => noteElement(bench, on, said),
    });
  };
  useLearnedKeys({ surface: endInHand, machine: isTwoLanes ? (at) => endMachine(bench, at) : null });
  return (
    <ObserveFrame
      title={words.title(study.title)}
      head={<WatchHead study={study} isSnapback={isSnapback} maySleep={!isAwake} />}
      sheet={
        <LiveElementSheet
          elements={elements}
          readings={study.readings}
          watch={study.watch}
          lanes={isTwoLanes ? 2 : 1}
          acts={
            isReadOnly
              ? null
              : {
                  choose: (elementNo) => chooseElement(bench, elementNo),
                  begin: (elementNo, at) => beginOccasional(bench, at, elementNo),
                  remark: remarkOnReading,
                }
          }
        />
      }
      pad={
        <RatingPad judged={judged} lock={lock} disabled={isReadOnly} onRate={rate} onSwitch={switchOver} />
      }
      actions={
        remark ? (
          <RemarkLine key={JSON.stringify(remark)} {...remark} onClose={() => setRemark(null)} />
        ) : (
          <ObserveActions watch={study.watch} isSnapback={isSnapback} onRemark={remarkInHand} />
        )
      }
      surface={
        <>
          <BreakPointSurface study={study} disabled={isReadOnly} onTap={endInHand} />
          {isTwoLanes && (
            <MachineSurface
              running={elements[study.watch.machine?.elementIndex ?? -1] ?? null}
              starter={
                elements[nextStart({ elements, lanes: 2 }, study.watch.elementIndex) ?? -1]?.name ?? ''
              }
              shortRun={shortRun(study)}
              disabled={isReadOnly}
              onTap={(at) => endMachine(bench, at)}
            />
          )}
        </>
      }
      ends={<EndOfStudy study={study} />}
    />
  );
}

/** The machine's run that its place was tapped to start, as a time; null when the last tap was none. */
function shortRun(study: Study): string | null {
  const slip = slipOf(study);
  return slip?.row.work === 'machine' ? timeWords.s.said(slip.row.observedMs!) : null;
}
