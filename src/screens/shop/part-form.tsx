import { useState } from 'preact/hooks';
import { retirePart } from '../../application/shop/retire-part';
import { partInHand } from '../../application/turn/part-in-hand';
import { isSameCode } from '../../domain/shop/known-code';
import type { Part } from '../../domain/shop/shop';
import { shop } from '../../i18n/en/shop';
import { useApp } from '../app';
import { PREPARE_OF } from '../study/study-places';
import { type PartTyped, savePart } from './save-part';
import { shownTarget } from './shown-target';
import { TaktOffer } from './takt-offer';
import { TappingChoice } from './tapping-choice';
import { TargetField } from './target-field';

const words = shop.form;

interface Props {
  readonly part: Part | null;
  readonly typed: PartTyped;
  readonly change: (typed: PartTyped) => void;
  readonly close: (tell: string) => void;
}

/** One part, new or known: code, name, target. Nothing is taken before Save, and then all of it or nothing. */
export function PartForm({ part, typed, change, close }: Props) {
  const app = useApp();
  const { bench, isReadOnly } = app;
  const [fault, setFault] = useState('');

  const save = (event: Event) => {
    event.preventDefault();
    const refused = savePart(bench, part, typed);
    if (refused) setFault(refused);
    else close(words.saved(typed.code.trim()));
  };
  const retire = (retired: boolean) => {
    if (!part) return;
    const taken = bench.shop.value.parts.find(
      (other) => other.id !== part.id && !other.retired && isSameCode(other.code, part.code),
    );
    if (!retired && taken) return setFault(words.codeTaken(taken.code));
    retirePart(bench, part.id, retired);
    close(retired ? words.retired(part.code) : words.broughtBack(part.code));
  };
  const source = part?.targetSource;
  const study = part?.targetStudy;
  const method = part?.methods.at(-1);

  return (
    <form class="stack shop-form" onSubmit={save} noValidate>
      <h1>{part ? words.title(part.code) : words.newTitle}</h1>
      <div class="shop-fields">
        <label class="field">
          <span>{words.code}</span>
          <input
            value={typed.code}
            autocomplete="off"
            autocapitalize="characters"
            maxLength={40}
            required
            onInput={(event) => change({ ...typed, code: event.currentTarget.value })}
          />
        </label>
        <label class="field">
          <span>{words.name}</span>
          <input
            value={typed.name}
            autocomplete="off"
            maxLength={80}
            onInput={(event) => change({ ...typed, name: event.currentTarget.value })}
          />
        </label>
      </div>
      <TargetField
        typed={typed.target ?? shownTarget(part?.targetMs ?? null)}
        standingMs={part?.targetMs ?? null}
        change={(target) => change({ ...typed, target, isTakt: false })}
      />
      {(source === 'standard' || source === 'past') && (
        <div class="row">
          <p class="shop-beside">
            {shop.parts.source}: {shop.parts.sources[source]}. {words.keepsStandard}
          </p>
          {study && (
            <button type="button" class="button" onClick={() => app.go('study', study)}>
              {words.openStudy}
            </button>
          )}
        </div>
      )}
      <TaktOffer
        isTaken={typed.isTakt === true}
        take={(taktMs) => change({ ...typed, target: shownTarget(taktMs), isTakt: true })}
      />
      <TappingChoice
        chosen={typed.tapping ?? part?.tapping ?? 'each-part'}
        hasElements={part !== null && partInHand({ ...part, tapping: 'elements' }).elements !== undefined}
        choose={(tapping) => change({ ...typed, tapping })}
      />
      {fault && (
        <p class="fault" role="alert">
          {fault}
        </p>
      )}
      <div class="row">
        <button type="submit" class="button strong" disabled={isReadOnly}>
          {words.save}
        </button>
        <button type="button" class="button" onClick={() => close('')}>
          {words.cancel}
        </button>
      </div>
      {part && (
        <div class="stack shop-more">
          {!part.retired && (
            <div class="row">
              <button type="button" class="button" onClick={() => app.go('study', PREPARE_OF + part.id)}>
                {words.study}
              </button>
              <p class="shop-beside">
                {method
                  ? words.method(method.revision, method.elements.map(({ name }) => name).join(' · '))
                  : words.noMethod}
              </p>
            </div>
          )}
          <div class="row">
            <button type="button" class="button" disabled={isReadOnly} onClick={() => retire(!part.retired)}>
              {part.retired ? words.bringBack : words.retire}
            </button>
            <p class="small quiet shop-beside">{words.retireNote}</p>
          </div>
        </div>
      )}
    </form>
  );
}
