import './observe-frame.css';
import type { ComponentChildren } from 'preact';

interface Props {
  readonly title: string;
  readonly head: ComponentChildren;
  readonly sheet: ComponentChildren;
  readonly pad: ComponentChildren;
  readonly actions: ComponentChildren;
  readonly surface: ComponentChildren;
  readonly ends: ComponentChildren;
}

/** Where things are while timing. The surface keeps its place from Start to the last tap. */
export function ObserveFrame({ title, head, sheet, pad, actions, surface, ends }: Props) {
  return (
    <div class="study-observe">
      <h1 class="visually-hidden">{title}</h1>
      <div class="study-observe-head">{head}</div>
      <div class="study-observe-sheet">{sheet}</div>
      <div class="study-observe-pad">{pad}</div>
      <div class="study-observe-actions">{actions}</div>
      <div class="study-observe-surface">{surface}</div>
      <div class="study-observe-ends">{ends}</div>
    </div>
  );
}
