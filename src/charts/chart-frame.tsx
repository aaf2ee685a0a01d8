import type { ComponentChildren } from 'preact';

interface Props {
  /** Unlike any other on the page: the parts of the drawing are named after it. */
  readonly id: string;
  readonly title: string;
  /** What the picture says, in words, for those who do not see it. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly children: ComponentChildren;
}

/**
 * A drawing with a title and a description that a screen reader reads instead of it. It never holds open what it
 * stands in: a page that becomes narrow is measured, and the drawing made anew, only once it may shrink.
 */
export function ChartFrame({ id, title, description, width, height, children }: Props) {
  return (
    <svg
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      style="display:block;max-width:100%;font-variant-numeric:tabular-nums"
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      {children}
    </svg>
  );
}
