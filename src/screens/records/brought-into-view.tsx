import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface Props {
  /** Whenever it changes, the answer is brought into view again. */
  readonly answer: unknown;
  readonly children: ComponentChildren;
}

/** An answer to something that was just asked: below the fold it would be no answer. */
export function BroughtIntoView({ answer, children }: Props) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => box.current?.scrollIntoView({ block: 'nearest' }), [answer]);
  return (
    <div ref={box} class="records-answer">
      {children}
    </div>
  );
}
