import { useState } from 'preact/hooks';
import type { Part } from '../../domain/shop/shop';
import { decimalMinutes } from '../../i18n/decimal-time';
import { shop } from '../../i18n/en/shop';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { useApp } from '../app';

const words = shop.parts;

interface Props {
  readonly parts: readonly Part[];
  /** What was just done; empty when nothing was. */
  readonly told: string;
  readonly pick: (part: string) => void;
}

/** The parts of the shop, ruled: one line a part. A line is touched to change it. */
export function PartSheet({ parts, told, pick }: Props) {
  const { isReadOnly } = useApp();
  const [showsRetired, setShowsRetired] = useState(false);
  const retired = parts.filter((part) => part.retired);
  const shown = parts
    .filter((part) => showsRetired || !part.retired)
    .sort(
      (a, b) =>
        Number(a.retired) - Number(b.retired) || a.code.localeCompare(b.code, 'en', { numeric: true }),
    );
  return (
    <section class="stack" aria-labelledby="shop-parts-title">
      <div class="row spread">
        <h1 id="shop-parts-title">{words.title}</h1>
        <button type="button" class="button strong" disabled={isReadOnly} onClick={() => pick('new')}>
          {words.add}
        </button>
      </div>
      <p class={told ? 'shop-told' : 'visually-hidden'} role="status">
        {told}
      </p>
      {shown.length === 0 ? (
        <p class="panel">{words.none}</p>
      ) : (
        <table class="sheet shop-sheet">
          <thead>
            <tr>
              <th scope="col">{words.code}</th>
              <th scope="col" class="words">
                {words.name}
              </th>
              <th scope="col">{words.target}</th>
              <th scope="col" class="words">
                {words.source}
              </th>
              <th scope="col" class="words">
                {words.method}
              </th>
            </tr>
          </thead>
          <tbody>
            {shown.map((part) => (
              <Line key={part.id} part={part} pick={pick} />
            ))}
          </tbody>
        </table>
      )}
      {retired.length > 0 && (
        <div class="row">
          <button type="button" class="button plain" onClick={() => setShowsRetired(!showsRetired)}>
            {showsRetired ? words.hideRetired : words.showRetired(retired.length)}
          </button>
        </div>
      )}
    </section>
  );
}

function Line({ part, pick }: { part: Part; pick: Props['pick'] }) {
  const { id, code, name, retired, targetMs, targetSource, methods } = part;
  const method = methods.at(-1);
  return (
    <tr class={retired ? 'quiet' : ''}>
      <th scope="row" class="words">
        <button type="button" class="shop-line" aria-label={words.change(code)} onClick={() => pick(id)}>
          {code}
        </button>
      </th>
      <td class="words">
        {name}
        {retired && <small>{words.retired}</small>}
      </td>
      <td>
        {targetMs === null ? (
          <span class="quiet">{words.noTarget}</span>
        ) : (
          <>
            <strong>{roundedClockFace(targetMs)}</strong>
            <small>{words.minutes(decimalMinutes(targetMs))}</small>
          </>
        )}
      </td>
      <td class="words">{targetSource && words.sources[targetSource]}</td>
      <td class="words">
        {method ? (
          words.revision(method.revision, method.elements.length)
        ) : (
          <span class="quiet">{words.noMethod}</span>
        )}
      </td>
    </tr>
  );
}
