import { cell as words } from '../../i18n/en/cell';
import type { ReckonedPart } from './reckon-parts';

export interface PartProps {
  readonly parts: readonly ReckonedPart[];
  readonly part: ReckonedPart;
  readonly choose: (partCode: string) => void;
}

/** Which part the page is about; nothing where there is one only. */
export function PartChoice({ parts, part, choose }: PartProps) {
  if (parts.length < 2) return null;
  return (
    <fieldset class="choices cell-parts">
      <legend class="visually-hidden">{words.part}</legend>
      {parts.map(({ partCode }) => (
        <button
          key={partCode}
          type="button"
          class="choice"
          aria-pressed={partCode === part.partCode}
          onClick={() => choose(partCode)}
        >
          {partCode || words.noCode}
        </button>
      ))}
    </fieldset>
  );
}
