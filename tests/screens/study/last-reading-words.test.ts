import { describe, expect, it } from 'vitest';
import { missBreakPoint } from '../../../src/application/study/miss-break-point';
import { lastReadingWords } from '../../../src/screens/study/last-reading-words';
import { openStudy, studyOf, tapAfter } from '../../domain/study/study-at-the-bench';

const last = (at: Awaited<ReturnType<typeof openStudy>>) =>
  lastReadingWords(studyOf(at.bench).readings.at(-1)!.row);

describe('what the watch says of the last reading', () => {
  it('is its time and its rating; a machine has none', async () => {
    const at = await openStudy();
    tapAfter(at, 12_000, 110);
    expect(last(at)).toBe('Last: Load 0.20, rated 110');
    tapAfter(at, 30_000, 110);
    expect(last(at)).toBe('Last: Run 0.50');
  });

  it('is no rating where the break point before it was missed', async () => {
    const at = await openStudy();
    tapAfter(at, 12_000);
    missBreakPoint(at.bench);
    tapAfter(at, 42_000);
    expect(last(at)).toBe('Last: Clean 0.70; break point missed');
  });
});
