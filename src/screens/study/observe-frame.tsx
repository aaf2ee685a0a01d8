import './observe-frame.css';
import type { ComponentChildren } from 'preact';
import { study } from '../../i18n/en/study';

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
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a long sheet is scrolled by keys too */}
      <section class="study-observe-sheet" aria-label={study.observe.sheet} tabIndex={0}>
        {sheet}
      </section>
      <div class="study-observe-pad">{pad}</div>
      <div class="study-observe-actions">{actions}</div>
      <div class="study-observe-surface">{surface}</div>
      <div class="study-observe-ends">{ends}</div>
    </div>
  );
}
