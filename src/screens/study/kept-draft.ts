import type { Bench } from '../../application/bench';
import type { StudyDraft } from './study-draft';

/**
 * A study in preparation, kept while the page lives: looking at another screen must not cost what was typed.
 * It is no record of anything that happened, so it is not in the log.
 */
const drafts = new WeakMap<Bench, StudyDraft>();

export const keptDraft = {
  of: (bench: Bench): StudyDraft | null => drafts.get(bench) ?? null,
  keep: (bench: Bench, draft: StudyDraft): void => {
    drafts.set(bench, draft);
  },
  drop: (bench: Bench): void => {
    drafts.delete(bench);
  },
};
