import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkValueTable } from './check-value-table';
import { type PublishedAnswer, publishedAnswers } from './published-answers';
import { publishedStudyAnswers } from './published-study-answers';

const answer: PublishedAnswer = {
  id: 'made.up.1',
  source: 'a book, row 1',
  flag: 'constructed',
  note: '',
  what: 'n',
  printed: 3,
  tolerance: 0,
  ours: 3,
};
const table = checkValueTable([...publishedStudyAnswers(), ...publishedAnswers()]);

describe('the table of published answers', () => {
  it('has a line for every value of a small item, with print and ours side by side', () => {
    const lines = checkValueTable([answer, { ...answer, id: 'other', printed: 4, ours: 4.0001 }]).split('\n');
    expect(lines[4]).toBe('| made.up | a book, row 1 (constructed) | 3 | 3 | yes |');
    expect(lines[5]).toBe('| other | a book, row 1 (constructed) | 4 | 4.0001 | yes |');
  });

  it('says what differs and why, and never hides it among those that agree', () => {
    const wrong = { ...answer, id: 'made.up.2', printed: 5, ours: 6, differs: true, note: 'A slip.' };
    const lines = checkValueTable([answer, wrong]).split('\n');
    expect(lines[4]).toBe('| made.up | a book, row 1 (constructed) | 3, 5 | 3, 6 | but for: 5. A slip. |');
    expect(table.split('\n')[0]).toMatch(/^\d+ values; \d+ are printed otherwise/);
  });

  it('is in DEVELOPERS.md as `node .config/check-value-table.mjs` writes it, wherever its markers stand', () => {
    const developers = readFileSync('DEVELOPERS.md', 'utf8');
    const written = /<!-- check-values:start -->\n\n([\s\S]*?)\n\n<!-- check-values:end -->/.exec(developers);
    const hasMarkers = developers.includes('<!-- check-values:start -->');
    expect(written?.[1]).toBe(hasMarkers ? table : undefined);
  });
});
