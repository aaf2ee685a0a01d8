import type { ElementDefinition, Placement, WorkKind } from '../domain/shop/element-definition';
import { doorsPerOccurrence } from './work-content';

const element = (
  name: string,
  breakPoint: string,
  placement: Placement,
  work: WorkKind = 'manual',
  every?: number,
): ElementDefinition => ({
  name,
  breakPoint,
  elementClass: every === undefined ? 'repetitive' : 'occasional',
  work,
  placement,
  unitsPerOccurrence: every ?? 1,
});

/** The one-piece method, from the walk to the machine on: how a door is bored while the one before is inspected and the next cleaned up. */
export const demoMethod: readonly ElementDefinition[] = [
  element('W1 walk to machine', 'Hand on the machine guard', 'external', 'walking'),
  element('E1 unload to bench', 'Door touches the bench', 'external'),
  element('E2 load, clamp, start', 'Clamps hiss shut, cycle-start pressed', 'external'),
  element('W2 walk to bench', 'Hand on the bored door', 'internal', 'walking'),
  element('E3 inspect', 'Gauge put down', 'internal'),
  element('E4 place on trolley', 'Door knocks on the trolley stop', 'internal'),
  element('E5 get next', 'Next door touches the bench', 'internal'),
  element('E6 clean up edges', 'Scraper put down', 'internal'),
  element('MC bore', 'Spindles stop', 'external', 'machine'),
  element(
    'O1 change scraper blade',
    'Old blade in the box',
    'internal',
    'manual',
    doorsPerOccurrence.changeBlade,
  ),
  element(
    'O2 exchange trolley',
    'Empty trolley at its stop',
    'internal',
    'manual',
    doorsPerOccurrence.exchangeTrolley,
  ),
  element('O3 empty chip tray', 'Tray clicks in', 'external', 'manual', doorsPerOccurrence.emptyChipTray),
];

export const demoConditions =
  'Edge-banded doors in stacks of 20, trolleys of 8; boring machine at 100 % feed, sharp cutters';
