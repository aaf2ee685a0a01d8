import { useEffect, useState } from 'preact/hooks';
import { definePart } from '../../application/shop/define-part';
import { setTarget } from '../../application/shop/set-target';
import { isSameCode } from '../../domain/shop/known-code';
import { readTargetTime } from '../../domain/shop/read-target-time';
import { turnSetup as words } from '../../i18n/en/turn-setup';
import { useApp } from '../app';
import { useFocus } from '../use-focus';

/** A code stands on buttons and in columns. */
const LONGEST = 24;

interface Props {
  added(id: string): void;
  /** The code that could be added now, with its target; empty while there is none. */
  typing?(code: string, targetMs: number | null): void;
  /** Null while there is no other part to choose. */
  readonly cancel: (() => void) | null;
}

/** A part in one line: a code, and if there are any a name and a target. */
export function AddPart({ added, cancel, typing }: Props) {
  const { bench, isReadOnly } = useApp();
  const [code, setCode] = useState('');
  const [name, setName] = useState('');
  const [typed, setTyped] = useState('');
  const field = useFocus(cancel !== null);
  // With a supervisor's PIN a target is set in Shop.
  const { parts, isLatched } = bench.shop.value;
  const target = readTargetTime(typed);
  const same = parts.find((part) => !part.retired && isSameCode(part.code, code));
  const isTargetFine = target.ok || target.fault === 'empty';

  const isReady = code.trim() !== '' && !same && isTargetFine;
  useEffect(() => {
    typing?.(isReady ? code.trim() : '', target.ok ? target.targetMs : null);
    return () => typing?.('', null);
  }, [isReady, code, typed]);

  const add = (event: Event) => {
    event.preventDefault();
    if (!isReady) return;
    const id = definePart(bench, code, name);
    if (target.ok) setTarget(bench, id, target.targetMs);
    added(id);
  };

  // First what is missing, then what is good to know.
  const hint =
    code.length >= LONGEST
      ? words.codeIsFull(LONGEST)
      : code.trim() === '' && (name !== '' || typed !== '')
        ? words.needsCode
        : isLatched
          ? words.targetInShop
          : words.targetHint;
  return (
    <form class="pace-add" onSubmit={add}>
      <label class="field">
        <span>{words.partCode}</span>
        <input
          ref={field}
          value={code}
          maxLength={LONGEST}
          autocomplete="off"
          disabled={isReadOnly}
          onInput={(event) => setCode(event.currentTarget.value)}
        />
      </label>
      <label class="field">
        <span>{words.partName}</span>
        <input
          value={name}
          maxLength={60}
          autocomplete="off"
          disabled={isReadOnly}
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </label>
      {!isLatched && (
        <label class="field">
          <span>{words.target}</span>
          <input
            value={typed}
            maxLength={10}
            autocomplete="off"
            enterkeyhint="done"
            aria-describedby="pace-target-understood"
            disabled={isReadOnly}
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
        </label>
      )}
      <button type="submit" class="button" disabled={isReadOnly || !isReady}>
        {words.addPart}
      </button>
      {cancel && (
        <button type="button" class="button" onClick={cancel}>
          {words.cancel}
        </button>
      )}
      <p id="pace-target-understood" class={same || !isTargetFine ? 'fault' : 'quiet small'} role="status">
        {same ? (
          words.codeTaken(same.code, words.targetOf(same.targetMs))
        ) : target.ok ? (
          <>
            {code.trim() === '' && `${words.needsCode} `}
            <strong class="number pace-target-equals">{words.targetEquals(target.targetMs)}</strong>{' '}
            {words.targetMinutes(target.targetMs)}
          </>
        ) : (
          words.targetFaults[target.fault] || hint
        )}
      </p>
    </form>
  );
}
