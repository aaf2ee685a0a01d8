export const screenNames = ['pace', 'study', 'cell', 'review', 'shop', 'records'] as const;
export type ScreenName = (typeof screenNames)[number];

/** Of Records: the check of the tablet itself. */
export const TABLET_PLACE = 'tablet';

/** Where the page is. Hash routes, because a deep link must open without a server. */
export interface Route {
  readonly screen: ScreenName;
  /** What the screen shows: a study, a day. Empty for the screen itself. */
  readonly id: string;
  readonly isDemo: boolean;
}

/** `#/study/tablet-7%3A12`, or `#/demo/study/…` in the demo shop. */
export function parseRoute(hash: string): Route {
  const steps = hash.replace(/^#\/?/, '').split('/');
  const isDemo = steps[0] === 'demo';
  const [name = '', id = ''] = isDemo ? steps.slice(1) : steps;
  const screen = screenNames.find((known) => known === name) ?? 'pace';
  return { screen, id: decode(id), isDemo };
}

export function routeHash({ screen, id, isDemo }: Route): string {
  return `#/${isDemo ? 'demo/' : ''}${screen}${id ? `/${encodeURIComponent(id)}` : ''}`;
}

/** Where nothing but a study is timed, its watch is what the app is opened for. */
export function opensOnWatch(
  { screen }: Route,
  turn: object | null,
  study: { readonly status: string } | null,
): boolean {
  return screen === 'pace' && turn === null && study?.status === 'open';
}

/** A hash typed by hand may hold a stray per cent sign. */
function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
