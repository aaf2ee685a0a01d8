import { cell as words } from '../../i18n/en/cell';
import { partName } from './part-name';
import type { ReckonedPart } from './reckon-parts';
import { StudySource } from './study-source';

export interface PartProps {
  readonly parts: readonly ReckonedPart[];
  readonly part: ReckonedPart;
  readonly choose: (key: string) => void;
}

/** Which part the page is about, and which study that rests on. */
export function PartChoice({ parts, part, choose }: PartProps) {
  return (
    <div>
      {parts.length > 1 && (
        <fieldset class="choices cell-parts">
          <legend class="visually-hidden">{words.part}</legend>
          {parts.map((own) => (
            <button
              key={own.key}
              type="button"
              class="choice"
              aria-pressed={own === part}
              onClick={() => choose(own.key)}
            >
              {partName(own)}
            </button>
          ))}
        </fieldset>
      )}
      <StudySource part={part} />
    </div>
  );
}
