import { expect, it } from 'vitest';
import { zoneName } from '../../src/device/zone-name';

function watched() {
  let zone = 'Europe/Berlin';
  let asked = 0;
  const at = zoneName(() => {
    asked += 1;
    return zone;
  });
  return {
    at,
    get asked() {
      return asked;
    },
    travel(to: string) {
      zone = to;
    },
  };
}

it('the zone is asked for once a minute, not with every tap', () => {
  const tablet = watched();
  for (let ms = 0; ms < 60_000; ms += 200) expect(tablet.at(ms, 60)).toBe('Europe/Berlin');
  expect(tablet.asked).toBe(1);
  tablet.at(60_000, 60);
  expect(tablet.asked).toBe(2);
});

it('a zone with another offset is seen with the next tap, one with the same within a minute', () => {
  const tablet = watched();
  tablet.at(0, 60);
  tablet.travel('Asia/Kolkata');
  expect(tablet.at(200, 330)).toBe('Asia/Kolkata');
  tablet.travel('Asia/Colombo');
  expect(tablet.at(400, 330)).toBe('Asia/Kolkata');
  expect(tablet.at(60_200, 330)).toBe('Asia/Colombo');
});

it('an event from before the last look has a zone too', () => {
  const tablet = watched();
  tablet.at(120_000, 60);
  expect(tablet.at(119_990, 60)).toBe('Europe/Berlin');
});
