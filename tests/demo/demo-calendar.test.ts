import { expect, it } from 'vitest';
import { demoCalendar } from '../../src/demo/demo-calendar';

it('gives every shift of the demo a name, so that a change of it can be saved', () => {
  expect(demoCalendar.shifts.map(({ name }) => name)).toEqual(['Day shift']);
});
