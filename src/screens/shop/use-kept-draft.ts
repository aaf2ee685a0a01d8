import { useState } from 'preact/hooks';
import type { Bench } from '../../application/bench';

/**
 * What is being typed, kept while the page lives: a look at another screen must not cost it. It is no record of
 * anything that happened, so it is not in the log.
 */
const drafts = new WeakMap<Bench, Map<string, unknown>>();

/** The draft of that name, or null; and a way to keep another, or with null none. */
export function useKeptDraft<Draft>(
  bench: Bench,
  name: string,
): [Draft | null, (draft: Draft | null) => void] {
  const own = drafts.get(bench) ?? new Map<string, unknown>();
  const [draft, setDraft] = useState((own.get(name) ?? null) as Draft | null);
  const keep = (next: Draft | null) => {
    own.set(name, next);
    drafts.set(bench, own);
    setDraft(next);
  };
  return [draft, keep];
}
