import { internalAfterStop } from '../../domain/study/one-lane';
import type { Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { studyReduce } from '../../i18n/en/study-reduce';

const words = studyReduce.oneLane;

/** What a study of one lane can say of work beside the machine, and what it cannot; nothing where none was beside. */
export function OneLaneNote({ study }: { study: Study }) {
  const { heading, readings } = study;
  if (heading?.lanes !== 1) return null;
  const behind = behindWords(study);
  const runs = new Set(readings.flatMap(({ isBeside, row }) => (isBeside ? [row.element] : [])));
  return (
    <>
      {runs.size > 0 && <p>{words.whole(allWords.and([...runs]))}</p>}
      {behind !== '' && <p class="fault">{behind}</p>}
    </>
  );
}

/** Work of the run that one lane could only time after the stop, and what it counts as; empty where there was none. */
export function behindWords({ heading }: Study): string {
  if (heading?.lanes !== 1) return '';
  const behind = internalAfterStop(heading.elements).map((index) => heading.elements[index]!.name);
  return behind.length === 0 ? '' : words.behind(allWords.and(behind));
}
