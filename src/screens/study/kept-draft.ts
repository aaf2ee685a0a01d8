import type { App } from '../app';
import { emptyStudyDraft, type StudyDraft } from './study-draft';

type Place = Pick<App, 'jotter'>;

/** DO NOT RENAME: a tablet may hold a study in preparation under it. */
const NAME = 'study-in-preparation';

/** A study in preparation, kept over other screens and over a reload. It is no record of anything that happened. */
export const keptDraft = {
  of({ jotter }: Place): StudyDraft | null {
    const text = jotter.read(NAME);
    return text === null ? null : draftOfText(text);
  },
  keep: ({ jotter }: Place, draft: StudyDraft): void => jotter.write(NAME, JSON.stringify(draft)),
  drop: ({ jotter }: Place): void => jotter.write(NAME, null),
};

/** What an earlier release kept may lack a field: it begins empty. What is no draft at all is none. */
function draftOfText(text: string): StudyDraft | null {
  try {
    const kept: StudyDraft = JSON.parse(text);
    return Array.isArray(kept?.elements) ? { ...emptyStudyDraft(null), ...kept } : null;
  } catch {
    return null;
  }
}
