import './self-check.css';
import { useEffect, useState } from 'preact/hooks';
import { problemOf } from '../../application/backup/problem-of';
import { checkTablet } from '../../application/records/check-tablet';
import type { TabletTools } from '../../application/tablet-tools';
import { localDay } from '../../domain/day/local-day';
import { selfCheckWords as words } from '../../i18n/en/self-check';
import { formatDay } from '../../i18n/format-day';
import { useApp } from '../app';
import { timeOfDay } from '../pace/time-of-day';
import { InstallOffer } from '../tablet/install-offer';
import { HandOnText } from './hand-on-text';
import { type TabletLine, tabletLines } from './tablet-lines';
import { tabletText } from './tablet-text';

/** What the tablet, its browser and its storage are like, and a text about it for whoever helps. */
export function SelfCheck() {
  const { bench, copies, copying, isDemo, lastingStorage, tabletTools, go } = useApp();
  const [looks, setLooks] = useState(0);
  const [followed, setFollowed] = useState(0);
  const [lines, setLines] = useState<readonly TabletLine[] | null>(null);
  const [tools, setTools] = useState<TabletTools | null>(null);
  const [problem, setProblem] = useState('');
  useEffect(() => {
    let isHere = true;
    const look = async () => {
      const brought = await tabletTools();
      const told = (count: number) => {
        if (isHere) setFollowed(count);
      };
      const takes = (await copying?.())?.format.takes;
      const state = await checkTablet(bench, brought, await lastingStorage(), told, takes);
      if (!isHere) return;
      setTools(brought);
      setLines(tabletLines(state, { copies, isDemo }));
    };
    setLines(null);
    look().catch((error) => isHere && setProblem(words.failed(problemOf(error))));
    return () => {
      isHere = false;
    };
  }, [bench, looks, copies, copying, isDemo, tabletTools, lastingStorage]);

  const amiss = lines?.filter(({ state }) => state === 'look').length ?? 0;
  const now = bench.clock.now();
  return (
    <div class="page stack self-check">
      <div class="row spread">
        <h1>{words.title}</h1>
        <button type="button" class="button" onClick={() => go('records')}>
          {words.back}
        </button>
      </div>
      <p class="quiet">{words.text}</p>
      <div role="status">
        {problem && <p class="fault">{problem}</p>}
        {!lines && !problem && <p class="number">{words.looking(followed)}</p>}
        {lines && <p class="self-check-answer">{amiss === 0 ? words.allFine : words.some(amiss)}</p>}
      </div>
      {lines && tools && (
        <>
          <LinesTable lines={lines} />
          <div class="row">
            <button type="button" class="button" onClick={() => setLooks(looks + 1)}>
              {words.again}
            </button>
            <InstallOffer installation={tools.installation} />
          </div>
          <HandOnText
            tools={tools}
            text={tabletText(lines, {
              release: tools.release,
              browser: tools.probe.browser,
              screen: tools.probe.screen,
              madeAt: `${formatDay(localDay(now))}, ${timeOfDay(now)}`,
            })}
          />
        </>
      )}
    </div>
  );
}

function LinesTable({ lines }: { lines: readonly TabletLine[] }) {
  return (
    <table class="sheet records-sheet">
      <tbody>
        {lines.map(({ name, state, found, todo }) => (
          <tr key={name}>
            <th scope="row" class="words">
              {name}
            </th>
            <td class="words self-check-state" data-state={state}>
              {words.states[state]}
            </td>
            <td class="words">
              {found}
              {todo && <strong class="self-check-todo">{todo}</strong>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
