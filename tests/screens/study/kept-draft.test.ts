import { describe, expect, it } from 'vitest';
import { keptDraft } from '../../../src/screens/study/kept-draft';
import { emptyStudyDraft, newElementDraft } from '../../../src/screens/study/study-draft';

/** What a browser keeps over a reload: texts under names. */
function place() {
  const texts = new Map<string, string>();
  return {
    texts,
    jotter: {
      read: (name: string) => texts.get(name) ?? null,
      write: (name: string, text: string | null) => {
        if (text === null) texts.delete(name);
        else texts.set(name, text);
      },
    },
  };
}

describe('a study in preparation', () => {
  it('is there again after a reload as it was typed, and gone once it is dropped', () => {
    const page = place();
    const draft = { ...emptyStudyDraft(null), operator: 'K7', elements: [newElementDraft([])] };
    keptDraft.keep(page, draft);
    expect(keptDraft.of({ jotter: page.jotter })).toEqual(draft);
    keptDraft.drop(page);
    expect(keptDraft.of(page)).toBeNull();
  });

  it('of an earlier release begins with what that release did not know', () => {
    const page = place();
    keptDraft.keep(page, emptyStudyDraft(null));
    const [name, text] = [...page.texts][0]!;
    const { observer: _, ...older } = JSON.parse(text);
    page.texts.set(name, JSON.stringify(older));
    expect(keptDraft.of(page)).toEqual(emptyStudyDraft(null));
  });

  it('is none where what is kept is damaged', () => {
    const page = place();
    keptDraft.keep(page, emptyStudyDraft(null));
    const [name] = [...page.texts.keys()];
    for (const text of ['{"elem', 'null', '7', '{"elements":3}']) {
      page.texts.set(name!, text);
      expect(keptDraft.of(page)).toBeNull();
    }
  });
});
