import './cell.css';
import { useMemo, useState } from 'preact/hooks';
import type { UnusedStudy } from '../../application/cell/read-cell-studies';
import { cell as words } from '../../i18n/en/cell';
import { useApp } from '../app';
import { useLazy } from '../use-lazy';
import { reckonParts } from './reckon-parts';
import type { Tried } from './tried-change';
import { type CellData, useCell } from './use-cell';
import { WhatGoverns } from './what-governs';

const tabs = ['governs', 'what-if', 'lead-time', 'people'] as const;

// What governs comes with the screen; the other pages when they are opened.
const whatIf = async () => (await import('./what-if')).WhatIf;
const leadTime = async () => (await import('./lead-time')).LeadTime;
const people = async () => (await import('./people-and-machines')).PeopleAndMachines;

/** What governs the cell, and what would change it? One page a question. */
export function CellScreen() {
  const found = useCell();
  if (found.state === 'reading') return <p class="page quiet">{words.reading}</p>;
  if (found.state === 'read') return <Cell cell={found.cell} />;
  return (
    <div class="page stack" role="alert">
      <p class="fault">{words.trouble(found.problem)}</p>
      <div class="row">
        <button type="button" class="button" onClick={found.readAgain}>
          {words.tryAgain}
        </button>
      </div>
    </div>
  );
}

function Cell({ cell }: { cell: CellData }) {
  const { route, go } = useApp();
  const [chosen, setChosen] = useState<string | null>(null);
  const [tried, setTried] = useState<Tried>({});
  const parts = useMemo(() => reckonParts(cell), [cell]);
  const tab = tabs.find((name) => name === route.value.id) ?? 'governs';
  // All of them in their mix, where that is known: it comes last.
  const part = parts.find(({ key }) => key === chosen) ?? parts.find(({ source }) => !source) ?? parts[0];
  const about = { cell, parts, choose: setChosen };
  const WhatIf = useLazy(tab === 'what-if', whatIf);
  const LeadTime = useLazy(tab === 'lead-time', leadTime);
  const People = useLazy(tab === 'people', people);
  return (
    <div class="page stack cell">
      <nav class="cell-tabs no-print" aria-label={words.tabsName}>
        {tabs.map((name) => (
          <button
            key={name}
            type="button"
            class="choice"
            aria-pressed={name === tab}
            onClick={() => {
              go('cell', name === 'governs' ? '' : name);
              document.querySelector('.shell-main')?.scrollTo({ top: 0 });
            }}
          >
            {words.tabs[name]}
          </button>
        ))}
      </nav>
      {cell.partial.map((unused) => (
        <p key={unused.title} class="small quiet">
          {whyUnused(unused)}
        </p>
      ))}
      {part && tab === 'governs' && <WhatGoverns {...about} part={part} />}
      {part && tab === 'what-if' && WhatIf && (
        <WhatIf key={part.key} {...about} part={part} tried={tried} setTried={setTried} />
      )}
      {part && tab === 'people' && People && <People key={part.key} {...about} part={part} />}
      {tab === 'lead-time' && LeadTime && <LeadTime {...about} part={part ?? null} />}
      {!part && tab !== 'lead-time' && <CellEmpty />}
    </div>
  );
}

function whyUnused({ title, missing, cycles }: UnusedStudy): string {
  if (cycles !== undefined) return words.tooFew(title, cycles);
  return missing.length > 0 ? words.partial(title, words.list(missing)) : words.tooShort(title);
}

function CellEmpty() {
  const { go } = useApp();
  return (
    <div class="panel stack">
      <h1>{words.empty.title}</h1>
      <p>{words.empty.text}</p>
      <div class="row">
        <button type="button" class="button strong" onClick={() => go('study')}>
          {words.empty.go}
        </button>
      </div>
    </div>
  );
}
