import type { ComponentChildren } from 'preact';
import type { Working } from './working';

interface Props {
  readonly working: () => Working;
  readonly open: (working: Working) => void;
  readonly class?: string;
  readonly children: ComponentChildren;
}

/** A figure that opens its working when it is touched. */
export function Figure({ working, open, class: name = '', children }: Props) {
  return (
    <button type="button" class={`review-figure ${name}`} onClick={() => open(working())}>
      {children}
    </button>
  );
}
