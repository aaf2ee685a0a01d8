import type { App } from '../app';

type Place = Pick<App, 'jotter'>;
type Chosen = '1' | '2';

/** DO NOT RENAME: a tablet may hold choices under it. */
const NAME = 'study-lanes';

/** How a part was timed last, by the part's id: what was chosen once is there the next time. */
export const keptLanes = {
  of(place: Place, part: string): Chosen | '' {
    const chosen = all(place)[part];
    return chosen === '1' || chosen === '2' ? chosen : '';
  },
  keep: (place: Place, part: string, chosen: Chosen): void =>
    place.jotter.write(NAME, JSON.stringify({ ...all(place), [part]: chosen })),
};

function all({ jotter }: Place): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(jotter.read(NAME) ?? '{}');
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}
