import { describe, expect, it } from 'vitest';
import type { MethodRevision } from '../../../src/domain/shop/shop';
import { conditionsOf, conditionsText } from '../../../src/screens/study/conditions';
import { draftFaults, withoutBreakPoint } from '../../../src/screens/study/draft-faults';
import {
  draftOfMethod,
  elementsOf,
  emptyStudyDraft,
  isRevised,
  lanesOfDraft,
  newElementDraft,
  type StudyDraft,
} from '../../../src/screens/study/study-draft';
import { draftOfTerms, termsOf } from '../../../src/screens/study/terms-draft';
import { heading } from '../../domain/study/study-at-the-bench';

const method: MethodRevision = {
  revision: 2,
  writtenOn: '2026-03-02',
  partsPerCycle: 1,
  conditions: 'P180',
  elements: [
    {
      name: 'Load',
      breakPoint: 'clamp clicks',
      elementClass: 'repetitive',
      work: 'manual',
      placement: 'external',
      unitsPerOccurrence: 1,
    },
  ],
};

function draft(change: Partial<StudyDraft> = {}): StudyDraft {
  return {
    ...emptyStudyDraft(null),
    ...draftOfMethod(method),
    part: 't:1',
    operator: 'K7',
    observer: 'E1',
    told: true,
    purpose: 'standard',
    ...change,
  };
}

const line = (change: object) => ({ ...newElementDraft([]), name: 'Load', ...change });

describe('a method on the sheet', () => {
  it('is the revision it came from until something is written', () => {
    expect(isRevised(draft(), method)).toBe(false);
    expect(isRevised(draft({ conditions: ' P180 ' }), method)).toBe(false);
  });

  it('is another revision when an element, the parts per cycle or a condition changes', () => {
    const [load] = draft().elements;
    const changes: Partial<StudyDraft>[] = [
      { elements: [{ ...load!, breakPoint: 'clamp hisses' }] },
      { elements: [...draft().elements, line({ name: 'Unload', key: 1 })] },
      { partsPerCycle: '2' },
      { conditions: 'P120' },
      { elements: [{ ...load!, driver: 'perimeter, m' }] },
    ];
    for (const change of changes) expect(isRevised(draft(change), method)).toBe(true);
  });

  it('takes an element of every cycle as once in one work unit, whatever was typed before', () => {
    expect(elementsOf([line({ units: '20' })])[0]?.unitsPerOccurrence).toBe(1);
    const [blade] = elementsOf([line({ elementClass: 'occasional', units: '20' })]);
    expect(blade?.unitsPerOccurrence).toBe(20);
  });
});

describe('the watch', () => {
  const elements = [
    line({}),
    line({ name: 'Inspect', placement: 'internal', key: 1 }),
    line({ name: 'Bore', work: 'machine', key: 2 }),
  ];

  it('times operator and machine at once where the method has work in the run, until something else is chosen', () => {
    expect(lanesOfDraft({ elements, chosenLanes: '' })).toBe(2);
    expect(lanesOfDraft({ elements, chosenLanes: '1' })).toBe(1);
  });

  it('times one after the other where nothing is done in the run, until something else is chosen', () => {
    const apart = [elements[0]!, elements[2]!];
    expect(lanesOfDraft({ elements: apart, chosenLanes: '' })).toBe(1);
    expect(lanesOfDraft({ elements: apart, chosenLanes: '2' })).toBe(2);
  });

  it('has one lane without a machine, whatever was chosen for an earlier method', () => {
    expect(lanesOfDraft({ elements: elements.slice(0, 2), chosenLanes: '2' })).toBe(1);
  });
});

describe('what a study lacks', () => {
  it('is nothing when all is written', () => {
    expect(draftFaults(draft())).toEqual([]);
  });

  it('is the part, before anything else', () => {
    expect(draftFaults(emptyStudyDraft(null))).toEqual(['Choose the part.']);
  });

  it('is said in a sentence each', () => {
    const occasional = line({ elementClass: 'occasional', name: 'Blade', key: 1 });
    const cases: [Partial<StudyDraft>, string][] = [
      [{ elements: [] }, 'Name at least one element.'],
      [{ elements: [line({ name: ' ' })] }, 'Element 1 has no name.'],
      [{ elements: [line({}), line({ key: 1 })] }, 'Two elements are called “Load”.'],
      [{ elements: [line({}), occasional] }, '“Blade” is occasional: say once in how many parts it comes'],
      [{ elements: [line({}), { ...occasional, units: '0' }] }, '“Blade” is occasional'],
      [{ elements: [{ ...occasional, units: '5' }] }, 'At least one element has to come in every cycle.'],
      [{ partsPerCycle: '1.5' }, 'Parts per cycle is a whole number'],
      [{ operator: ' ' }, 'Give the operator’s code.'],
      [{ observer: '' }, 'Say who observes.'],
      [{ terms: { ...draft().terms, allowance: '100' } }, 'An allowance is a number from 0 to below 100.'],
      [{ purpose: '' }, 'Say what the study is for.'],
      [{ elements: [line({ driver: 'perimeter, m' })] }, 'An element grows with the size of the part'],
      [{ plannedCycles: 'ten' }, 'Cycles planned are a whole number.'],
      [{ told: false }, 'The person has to know before the first tap.'],
    ];
    for (const [change, sentence] of cases) {
      const faults = draftFaults(draft(change));
      expect(faults).toHaveLength(1);
      expect(faults[0]).toContain(sentence);
    }
  });
});

describe('allowances as they are typed', () => {
  it('read a point and a comma alike, and nothing as none', () => {
    const typed = (allowance: string) =>
      termsOf({ allowance, basis: 'shift', machineAllowance: '', lines: [] })?.allowancePct;
    expect([typed('12.5'), typed('12,5'), typed(' 15 '), typed('')]).toEqual([12.5, 12.5, 15, 0]);
  });

  it('are none that can be kept outside 0 to 100', () => {
    for (const allowance of ['-1', '100', 'ten', '1e1', '1.2.3']) {
      expect(termsOf({ allowance, basis: 'shift', machineAllowance: '0', lines: [] })).toBeNull();
    }
  });

  it('add up line by line, without compounding, and are none while a line is no number', () => {
    const typed = (delay: string) => ({
      ...draftOfTerms({ allowancePct: 0, basis: 'normal_time', machineAllowancePct: 4 }),
      lines: [
        { name: 'personal needs', pct: '5' },
        { name: 'fatigue', pct: '6' },
        { name: 'delay', pct: delay },
      ],
    });
    expect(termsOf(typed('3'))).toMatchObject({
      allowancePct: 14,
      lines: [{ pct: 5 }, { pct: 6 }, { pct: 3 }],
    });
    expect(termsOf(typed('0,1'))?.allowancePct).toBe(11.1);
    expect(termsOf(typed(''))).toMatchObject({ allowancePct: 11, lines: [{ pct: 5 }, { pct: 6 }] });
    expect(termsOf(typed('x'))).toBeNull();
    expect(termsOf(typed('89'))).toBeNull();
  });

  it('come back as they were kept', () => {
    const terms = { allowancePct: 17.65, basis: 'normal_time', machineAllowancePct: 30 } as const;
    expect(termsOf(draftOfTerms(terms))).toEqual(terms);
  });
});

describe('a break point', () => {
  it('that nobody wrote is asked about, and keeps nobody from the watch', () => {
    const elements = [...draft().elements, line({ name: 'Unload', key: 1, breakPoint: ' ' })];
    expect(withoutBreakPoint(draft({ elements }))).toEqual(['Unload']);
    expect(draftFaults(draft({ elements }))).toEqual([]);
  });
});

describe('conditions', () => {
  it('are one text of names and values, and come back from it', () => {
    const conditions = [
      { name: 'feed', value: '70 %' },
      { name: '', value: 'P180' },
    ];
    expect(conditionsText(conditions)).toBe('feed: 70 %; P180');
    expect(conditionsOf('feed: 70 %; P180')).toEqual(conditions);
  });

  it('of a text somebody wrote freely stand alone', () => {
    expect(conditionsOf('MDF, white, wet')).toEqual([{ name: '', value: 'MDF, white, wet' }]);
  });

  it('without a value are kept and asked about, never dropped', () => {
    const conditions = conditionsText([{ name: 'feed', value: ' ' }]);
    expect(conditionsOf(conditions)).toEqual([{ name: 'feed', value: '' }]);
    expect(draftFaults(draft({ conditions }))).toEqual(['Say what “feed” is, or take the condition away.']);
    expect(conditionsText([{ name: ' ', value: '' }])).toBe('');
  });
});

describe('a preparation', () => {
  const terms = { allowancePct: 14, basis: 'normal_time', machineAllowancePct: 4 } as const;

  it('begins with the allowances of the last study, as they were set last, and says whose they are', () => {
    const last = { id: 't:7', heading: heading({ partCode: 'M' }), terms };
    expect(emptyStudyDraft(last)).toMatchObject({
      terms: { allowance: '14', machineAllowance: '4' },
      termsFrom: { what: 'study', partCode: 'M', place: 't:7' },
    });
  });

  it('says nothing of allowances that are none', () => {
    const none = { ...terms, allowancePct: 0, machineAllowancePct: 0 };
    expect(emptyStudyDraft({ id: 't:7', heading: heading(), terms: none }).termsFrom).toBeNull();
    expect(emptyStudyDraft(null).termsFrom).toBeNull();
  });
});
