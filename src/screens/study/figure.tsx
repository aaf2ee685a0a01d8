import { studySheet } from '../../i18n/en/study-sheet';

/** Which figure of the sheet is open, and how to open another. */
export interface OpenFigure {
  readonly key: string | null;
  readonly toggle: (key: string) => void;
}

interface Props {
  readonly name: string;
  readonly value: string;
  readonly figureKey: string;
  readonly open: OpenFigure;
}

/** A figure that shows its working when it is tapped. */
export function Figure({ name, value, figureKey, open }: Props) {
  const isOpen = open.key === figureKey;
  return (
    <button
      type="button"
      class="study-figure"
      aria-expanded={isOpen}
      aria-label={studySheet.explain(name, value)}
      onClick={() => open.toggle(figureKey)}
    >
      {value}
    </button>
  );
}
