import type { Part } from '../../../domain/shop/shop';
import { studySheet } from '../../../i18n/en/study-sheet';

const { head, columns } = studySheet;

/** On paper a standard leaves the tablet: which part, which method, under which conditions, from break point to break point. */
export function MethodOnPaper({ part }: { part: Part }) {
  const method = part.methods.at(-1);
  if (!method) return null;
  const lines = [
    [head.part, [part.code, part.name].filter(Boolean).join(', ')],
    [head.revision, `${method.revision}, ${method.writtenOn}`],
    [head.conditions, method.conditions || head.notStated],
    [
      columns.element,
      method.elements
        .map(({ name, breakPoint }, place) => `${place + 1} ${name}${breakPoint ? ` → ${breakPoint}` : ''}`)
        .join('; '),
    ],
  ];
  return (
    <dl class="study-head study-only-paper">
      {lines.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
