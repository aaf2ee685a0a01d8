import type { PublishedAnswer } from './published-answers';

/** An item with more values than this, such as a whole table of a book, is told by count and worst difference. */
const MOST_LISTED = 12;

/** Rows of one printed table are one line: `stat.t-table.7` and `stat.t-table.30` both belong to `stat.t-table`. */
const familyOf = (id: string) => id.replace(/(?<=[a-z])(\.\d[\d.-]*)+$/i, '');

/** What the source is, without the row of its table that only tells members of a family apart. */
const sourceOf = (answers: readonly PublishedAnswer[]) => {
  const sources = new Set(answers.map(({ source }) => source));
  const [first = ''] = sources;
  return sources.size === 1 ? first : first.slice(0, Math.max(0, first.lastIndexOf(','))) || first;
};

/** Ours with one digit more than the print has, so that a difference shows and noise does not. */
const shownOurs = ({ printed, ours }: PublishedAnswer) => {
  const digits = String(printed)
    .replace(/e.*|\D/g, '')
    .replace(/^0+/, '').length;
  return String(Number(ours.toPrecision(Math.min(15, Math.max(6, digits + 1)))));
};
const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

function valuesOf(answers: readonly PublishedAnswer[]): { printed: string; ours: string } {
  if (answers.length <= MOST_LISTED) {
    return {
      printed: answers.map(({ printed }) => printed).join(', '),
      ours: answers.map(shownOurs).join(', '),
    };
  }
  const worst = answers.reduce((a, b) =>
    Math.abs(b.ours - b.printed) > Math.abs(a.ours - a.printed) ? b : a,
  );
  return {
    printed: `${answers.length} values; furthest: ${worst.printed}`,
    ours: shownOurs(worst),
  };
}

function verdictOf(answers: readonly PublishedAnswer[]): string {
  const differing = answers.filter(({ differs }) => differs);
  if (differing.length === 0) return 'yes';
  const which = answers.length === 1 ? '' : `: ${differing.map(({ printed }) => printed).join(', ')}`;
  const notes = [...new Set(differing.map(({ note }) => note))].join(' ');
  return `${differing.length === answers.length ? 'no' : 'but for'}${which}. ${notes}`;
}

/** The published answers as a Markdown table: id, source and flag, printed, ours, whether they agree. */
export function checkValueTable(answers: readonly PublishedAnswer[]): string {
  const families = new Map<string, PublishedAnswer[]>();
  for (const answer of answers) {
    const key = `${familyOf(answer.id)}\n${answer.flag}`;
    families.set(key, [...(families.get(key) ?? []), answer]);
  }
  const lines = [...families].map(([key, members]) => {
    const { printed, ours } = valuesOf(members);
    const source = `${sourceOf(members)} (${members[0]!.flag})`;
    const cells = [key.split('\n')[0]!, source, printed, ours, verdictOf(members)];
    return `| ${cells.map(cell).join(' | ')} |`;
  });
  const differing = answers.filter(({ differs }) => differs).length;
  return [
    `${answers.length} values; ${differing} are printed otherwise than computed here, each with its reason.`,
    '',
    '| id | source | printed | ours | agrees |',
    '| --- | --- | --- | --- | --- |',
    ...lines,
  ].join('\n');
}
