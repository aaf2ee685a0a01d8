import { describe, expect, it } from 'vitest';
import { opensOnWatch, parseRoute, routeHash } from '../../src/screens/route';

describe('a route', () => {
  it('comes back from its hash, with an id that holds a colon and a slash', () => {
    for (const isDemo of [false, true]) {
      const route = { screen: 'study', id: 'tablet-7:12/x', isDemo } as const;
      expect(parseRoute(routeHash(route))).toEqual(route);
    }
  });
  it('is the Pace screen for an empty, an unknown and a broken hash', () => {
    for (const hash of ['', '#', '#/nowhere', '#/%E0%A4%A']) {
      expect(parseRoute(hash).screen).toBe('pace');
    }
  });
  it('is the watch where a study is timed, unless a turn runs or another place was asked for', () => {
    const pace = parseRoute('');
    expect(opensOnWatch(pace, null, { status: 'open' })).toBe(true);
    expect(opensOnWatch(pace, {}, { status: 'open' })).toBe(false);
    expect(opensOnWatch(pace, null, { status: 'ended' })).toBe(false);
    expect(opensOnWatch(pace, null, null)).toBe(false);
    expect(opensOnWatch(parseRoute('#/records'), null, { status: 'open' })).toBe(false);
  });
  it('keeps a demo route apart from the shop’s own', () => {
    expect(parseRoute('#/demo/review').isDemo).toBe(true);
    expect(parseRoute('#/review').isDemo).toBe(false);
  });
});
