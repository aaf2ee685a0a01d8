import { afterEach, describe, expect, it } from 'vitest';
import { study } from '../../../src/i18n/en/study';
import { elementWords } from '../../../src/screens/study/element-words';

const english = study.observe.foreignElement;
const foreign = (element: string) => elementWords({ element, elementClass: 'foreign' });

describe('a foreign element that nobody named', () => {
  afterEach(() => {
    Object.assign(study.observe, { foreignElement: english });
  });

  it('goes by the word of the language, also where its note is the name of an element', () => {
    Object.assign(study.observe, { foreignElement: 'Ablauffremdes' });
    expect(foreign('Foreign element')).toBe('Ablauffremdes');
    expect(foreign('Foreign element: Load')).toBe('Ablauffremdes: Load');
    expect(foreign('talk')).toBe('talk');
    expect(elementWords({ element: 'Foreign element', elementClass: 'repetitive' })).toBe('Foreign element');
  });
});
