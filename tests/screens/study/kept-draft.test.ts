import { describe, expect, it } from 'vitest';
import { keptDraft } from '../../../src/screens/study/kept-draft';
import { keptLanes } from '../../../src/screens/study/kept-lanes';
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

describe('how a part was timed', () => {
  it('is there for the next study of this part, and of no other', () => {
    const page = place();
    keptLanes.keep(page, 't:1', '1');
    keptLanes.keep(page, 't:2', '2');
    expect(['t:1', 't:2', 't:3'].map((part) => keptLanes.of(page, part))).toEqual(['1', '2', '']);
  });

  it('is open where what is kept is damaged', () => {
    const page = place();
    keptLanes.keep(page, 't:1', '1');
    const [name] = [...page.texts.keys()];
    for (const text of ['{"t:', 'null', '7', '{"t:1":3}']) {
      page.texts.set(name!, text);
      expect(keptLanes.of(page, 't:1')).toBe('');
    }
  });
});
