import { pace as words } from '../../i18n/en/pace';

/** Below a second the position has no direction. */
const LEVEL_WITHIN_MS = 1_000;

/** Ahead or behind: an arrow, a word and a place, with the colour last. */
export function PositionText({ ms, class: className }: { ms: number; class: string }) {
  const side = Math.abs(ms) < LEVEL_WITHIN_MS ? 'level' : ms > 0 ? 'ahead' : 'behind';
  const text = side === 'level' ? words.position.level : words.position[side](ms);
  return (
    <span class={`number pace-side ${className}`} data-side={side}>
      <span aria-hidden="true">{{ ahead: '▲', behind: '▼', level: '◆' }[side]}</span> {text}
    </span>
  );
}
