import type { ComponentChildren } from 'preact';

interface Props {
  readonly title: string;
  /** What holds while nobody opens it. */
  readonly summary: string;
  readonly children: ComponentChildren;
}

/** A part of a sheet that most can leave as it is: folded, with what it says. */
export function FoldedSection({ title, summary, children }: Props) {
  return (
    <details class="study-folded">
      <summary>
        <strong>{title}</strong> <span class="quiet">{summary}</span>
      </summary>
      <div class="stack">{children}</div>
    </details>
  );
}
