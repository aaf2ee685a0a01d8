import { useEffect, useState } from 'preact/hooks';
import { readStandards } from '../../application/shop/read-standards';
import type { StudyInList } from '../../application/study/list-studies';
import { localDay } from '../../domain/day/local-day';
import {
  noStandards,
  type PartStandards,
  standardInForce,
  standardToCome,
} from '../../domain/shop/fold-standards';
import { isSameCode } from '../../domain/shop/known-code';
import { standardDue } from '../../domain/study/standard-due';
import { study } from '../../i18n/en/study';
import { studyStandard } from '../../i18n/en/study-standard';
import { useApp } from '../app';
import { routeHash } from '../route';
import { useLogChanges } from '../use-log-changes';
import { PastTarget } from './past-target';
import { STANDARD_OF } from './study-places';
import { useTimeUnit } from './use-time-unit';

const words = studyStandard.list;

/** The standard of each part that was studied, whether one holds and what asks for a check. */
export function StandardsList({ studies }: { studies: readonly StudyInList[] }) {
  const { bench, isDemo } = useApp();
  const { said } = useTimeUnit().time;
  const [known, setKnown] = useState<ReadonlyMap<string, PartStandards>>(new Map());
  const changes = useLogChanges();
  useEffect(() => {
    let isCurrent = true;
    readStandards(bench).then(
      (found) => isCurrent && setKnown(found),
      () => {},
    );
    return () => {
      isCurrent = false;
    };
  }, [bench, changes]);

  const day = localDay(bench.clock.now());
  const parts = bench.shop.value.parts.filter(
    ({ code, retired }) => !retired && studies.some(({ partCode }) => isSameCode(partCode, code)),
  );
  if (parts.length === 0) return null;
  return (
    <section class="stack" aria-labelledby="study-standards">
      <h2 id="study-standards">{words.title}</h2>
      <table class="sheet study-list">
        <thead>
          <tr>
            <th scope="col">{words.part}</th>
            <th scope="col">{study.list.standard}</th>
            <th scope="col" class="words">
              {studyStandard.since}
            </th>
            <th scope="col" class="words">
              {words.check}
            </th>
          </tr>
        </thead>
        <tbody>
          {parts.map((part) => {
            const { id, code, methods, targetMs, targetSource } = part;
            const { standards } = known.get(id) ?? noStandards;
            const standard = standardInForce(standards, day);
            const toCome = standardToCome(standards, day);
            const isTarget =
              targetSource === 'standard' && targetMs === Math.round(toCome?.standardTimeMs ?? Number.NaN);
            const method = methods.at(-1);
            const causes = standard ? standardDue(standard, { day, method, laterNormalMs: [] }) : [];
            return (
              <tr key={id}>
                <td>
                  <a
                    href={routeHash({ screen: 'study', id: STANDARD_OF + id, isDemo })}
                    aria-label={studyStandard.title(code)}
                  >
                    {code}
                  </a>
                </td>
                <td>
                  {standard ? said(standard.standardTimeMs) : toCome === null && study.none}
                  {toCome && (
                    <div>
                      {said(toCome.standardTimeMs)} {studyStandard.from(toCome.inForceOn)}
                      {isTarget && <div class="small quiet">{words.isTarget}</div>}
                    </div>
                  )}
                  <PastTarget part={part} said={said} />
                </td>
                <td class="words">{standard?.inForceOn ?? ''}</td>
                <td class="words">{causes.map((cause) => studyStandard.due[cause]).join('; ')}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
