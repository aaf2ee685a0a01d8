import './choices.css';
import { useState } from 'preact/hooks';
import { sharedCodes } from '../../domain/shop/shared-codes';
import type { Part } from '../../domain/shop/shop';
import { turnSetup as words } from '../../i18n/en/turn-setup';
import { useApp } from '../app';
import { useLazy } from '../use-lazy';
import { lastFirst } from './last-first';

interface Props {
  readonly title: string;
  /** The title stands elsewhere already. */
  readonly isTitled?: boolean;
  readonly parts: readonly Part[];
  /** The part made last, in front of the others. */
  readonly last: string;
  readonly chosen: string;
  choose(part: Part): void;
  /** What is being typed for a part that is not there yet; empty for nothing. */
  typing?(code: string, targetMs: number | null): void;
}

/** The parts in use with their targets, and a new one added right here. */
export function PartChoice(props: Props) {
  const { title, isTitled = false, parts, last, chosen, choose, typing } = props;
  const { bench, isReadOnly } = useApp();
  const [isAdding, setAdding] = useState(false);
  const inUse = parts.filter(({ retired }) => !retired);
  // Of two with one code the tablet's own stands first, and each says whose it is.
  const twins = sharedCodes(inUse);
  const inOrder = lastFirst(inUse, ({ id }) => id.startsWith(`${bench.log.device}:`));
  const isOpen = isAdding || inUse.length === 0;
  const AddPart = useLazy(isOpen, loadAddPart);

  return (
    <section class="stack">
      {!isTitled && <h2>{title}</h2>}
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a wrapping row everywhere */}
      <div class="choices" role="group" aria-label={title} hidden={isAdding}>
        {lastFirst(inOrder, ({ id }) => id === last).map((part) => (
          <button
            type="button"
            key={part.id}
            class="choice pace-choice"
            aria-pressed={part.id === chosen}
            onClick={() => choose(part)}
          >
            <strong>{part.code}</strong>
            {part.name && <span>{part.name}</span>}
            <span class="small number">
              {words.targetOf(part.targetMs)}
              {part.id === last && ` · ${words.madeLast}`}
              {twins.includes(part) && ` · ${part.id.split(':')[0]}`}
            </span>
          </button>
        ))}
        {!isOpen && (
          <button
            type="button"
            class="button pace-other"
            disabled={isReadOnly}
            onClick={() => setAdding(true)}
          >
            {words.anotherPart}
          </button>
        )}
      </div>
      {isOpen && AddPart && (
        <AddPart
          {...(typing ? { typing } : {})}
          cancel={isAdding && inUse.length > 0 ? () => setAdding(false) : null}
          added={(id) => {
            setAdding(false);
            choose(bench.shop.value.parts.find((part) => part.id === id)!);
          }}
        />
      )}
    </section>
  );
}

/** In a shop that has its parts nobody waits for the form. */
const loadAddPart = async () => (await import('./add-part')).AddPart;
