import './base.css';
import type { ReadonlySignal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { openingWords as words } from '../../i18n/en/opening';

/** Storage that has not answered after this long, and the second before, is said not to answer. */
const NO_ANSWER_MS = 4_000;

interface WaitProps {
  /** A tab of an older release has the database. */
  readonly isHeldUp: ReadonlySignal<boolean>;
  readonly goOn: () => void;
}

/** Shown while the records are being opened, when that takes longer than a blink. Never an empty shop. */
export function OpeningWait({ isHeldUp, goOn }: WaitProps) {
  const [isLong, setLong] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLong(true), NO_ANSWER_MS);
    return () => clearTimeout(timer);
  }, []);
  return (
    <main class="page stack">
      <div class="stack" role="status">
        <h1>{words.opening}</h1>
        {isHeldUp.value ? <p>{words.heldUp}</p> : isLong && <p>{words.notAnswering}</p>}
      </div>
      {isLong && <Ways goOn={goOn} />}
    </main>
  );
}

/** Shown instead of an empty shop when the records cannot be read. */
export function OpeningTrouble({ error, goOn }: { error: unknown; goOn: () => void }) {
  const isNewer = error instanceof DOMException && error.name === 'VersionError';
  return (
    <main class="page stack">
      <div class="stack" role="alert">
        <h1>{isNewer ? words.newer : words.cannotOpen}</h1>
        {isNewer && <p>{words.newerText}</p>}
        <p class="quiet">{error instanceof Error ? `${error.name}: ${error.message}` : String(error)}</p>
      </div>
      <Ways goOn={goOn} />
    </main>
  );
}

/** Again, out with everything, or on without: work never waits for the storage. */
function Ways({ goOn }: { goOn: () => void }) {
  return (
    <>
      <div class="row">
        <button type="button" class="button strong" onClick={() => location.reload()}>
          {words.tryAgain}
        </button>
      </div>
      <p>
        <a class="shell-rescue" href="rescue.html">
          {words.rescue}
        </a>
      </p>
      <p>{words.goOnText}</p>
      <div class="row">
        <button type="button" class="button" onClick={goOn}>
          {words.goOn}
        </button>
      </div>
    </>
  );
}
