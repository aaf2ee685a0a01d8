import type { Tapping } from '../../domain/records/turn-fact';
import { partTapping as words } from '../../i18n/en/part-tapping';

const tappings = ['each-part', 'start-stop', 'elements'] as const;

interface Props {
  readonly chosen: Tapping;
  /** There are elements to tap. */
  readonly hasElements: boolean;
  choose(tapping: Tapping): void;
}

/** How the part is tapped at the station. */
export function TappingChoice({ chosen, hasElements, choose }: Props) {
  return (
    <fieldset class="stack shop-takt">
      <legend>{words.title}</legend>
      <div class="choices">
        {tappings.map((tapping) => (
          <button
            key={tapping}
            type="button"
            class="choice"
            aria-pressed={tapping === chosen}
            onClick={() => choose(tapping)}
          >
            {words.tappings[tapping]}
          </button>
        ))}
      </div>
      <p class="small quiet">
        {words.what[chosen]} {chosen === 'elements' && !hasElements && words.needsMethod}
      </p>
    </fieldset>
  );
}
