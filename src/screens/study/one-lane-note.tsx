import { internalAfterStop } from '../../domain/study/one-lane';
import type { Study } from '../../domain/study/study';
import { study as allWords } from '../../i18n/en/study';
import { studyReduce } from '../../i18n/en/study-reduce';

const words = studyReduce.oneLane;

/** What a study of one lane can say of work beside the machine, and what it cannot; nothing where none was beside. */
export function OneLaneNote({ study: { heading, readings } }: { study: Study }) {
  if (heading?.lanes !== 1) return null;
  const { elements } = heading;
  const runs = new Set(readings.flatMap(({ isBeside, row }) => (isBeside ? [row.element] : [])));
  const behind = internalAfterStop(elements).map((index) => elements[index]!.name);
  return (
    <>
      {runs.size > 0 && <p>{words.whole(allWords.and([...runs]))}</p>}
      {behind.length > 0 && <p class="fault">{words.behind(allWords.and(behind))}</p>}
    </>
  );
}
