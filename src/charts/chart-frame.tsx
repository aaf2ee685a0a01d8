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

/** A drawing with a title and a description that a screen reader reads instead of it. */
export function ChartFrame({ id, title, description, width, height, children }: Props) {
  return (
    <svg
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      style="display:block;font-variant-numeric:tabular-nums"
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      {children}
    </svg>
  );
}
