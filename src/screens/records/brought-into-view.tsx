import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface Props {
  /** Whenever it changes, the answer is brought into view again. */
  readonly answer: unknown;
  readonly children: ComponentChildren;
}

/**
 * An answer to something that was just asked: below the fold it would be no answer. What is counted late makes the page
 * grow above it, so it stays in view until the person moves the page.
 */
export function BroughtIntoView({ answer, children }: Props) {
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const bring = () => box.current?.scrollIntoView({ block: 'nearest' });
    bring();
    const growth = new ResizeObserver(bring);
    growth.observe(box.current!.closest('.page')!);
    const letGo = () => growth.disconnect();
    const moves = ['wheel', 'pointerdown', 'keydown'] as const;
    for (const move of moves) addEventListener(move, letGo, { capture: true, passive: true });
    return () => {
      letGo();
      for (const move of moves) removeEventListener(move, letGo, { capture: true });
    };
  }, [answer]);
  return (
    <div ref={box} class="records-answer">
      {children}
    </div>
  );
}
