import { ActivityColumns } from '../../charts/activity-columns';
import { HatchSwatch } from '../../charts/hatch-swatch';
import { type ActivityLane, activityChart } from '../../domain/cell/activity-chart';
import { atStandingMachine } from '../../domain/cell/at-standing-machine';
import type { CellWork } from '../../domain/cell/cell-work';
import { decimalMinutes } from '../../i18n/decimal-time';
import { cellGoverns as says, cell as words } from '../../i18n/en/cell';
import { formatNumber } from '../../i18n/format-number';
import { useWidth } from '../review/use-width';
import { PlainTable } from './plain-table';

interface Props {
  readonly work: CellWork;
  readonly machines?: number;
  /** Milliseconds at the foot of the chart, where it shares its scale with another one. */
  readonly scaleEndMs?: number;
  readonly title?: string;
}

/** The multiple-activity chart of a part, with what each column works and waits beneath it. */
export function ActivityPicture({ work, machines = 1, scaleEndMs = 0, title = says.chart }: Props) {
  const { ref, width } = useWidth();
  const { roundMs, parts, lanes } = activityChart(work, machines);
  const hasAttention = lanes.some(({ activities }) => activities.some(({ state }) => state === 'attending'));
  const hasMachine = lanes.some(({ who }) => who === 'machine');
  const loading = atStandingMachine(work.elements);
  const loadedMs = loading.reduce((sum, { meanMs }) => sum + meanMs, 0);
  const lastLoading = loading.findLast(({ meanMs }) => meanMs > 0);
  const waitsMs = ({ who, waitingMs }: ActivityLane) =>
    Math.max(0, waitingMs - (who === 'machine' ? loadedMs : 0));
  const min = (ms: number) => words.minutes(decimalMinutes(ms, 3));
  const saysAll = lanes.map((lane) =>
    says.laneSays(nameOf(lane, machines), min(lane.workingMs), min(waitsMs(lane))),
  );
  return (
    <figure class="cell-picture">
      <figcaption>
        <h3>{title}</h3>
        <p class="small quiet">{says.cycle(min(roundMs), parts)}</p>
      </figcaption>
      <div ref={ref}>
        {width > 0 && (
          <ActivityColumns
            id={`cell-activity-${title.length}`}
            title={title}
            description={says.chartSays(saysAll.join(' '))}
            width={width}
            height={430}
            end={roundMs / 60_000}
            scaleEnd={Math.max(roundMs, scaleEndMs) / 60_000}
            columns={lanes.map((lane) => ({
              title: nameOf(lane, machines),
              activities: lane.activities.map(({ name, state, fromMs, toMs }) => ({
                name,
                state,
                from: fromMs / 60_000,
                to: toMs / 60_000,
              })),
            }))}
            tickText={formatNumber}
          />
        )}
      </div>
      {hasMachine && lastLoading && <p class="small quiet">{says.starts(lastLoading.name)}</p>}
      {hasAttention && (
        <p class="small">
          <HatchSwatch id="cell-attending" hatching="diagonal" /> {says.legend.attending}
        </p>
      )}
      <PlainTable
        heads={[words.minutes(''), says.works, ...(hasMachine ? [says.loaded] : []), says.waits, says.use]}
        rows={lanes.map((lane) => [
          nameOf(lane, machines),
          decimalMinutes(lane.workingMs, 3),
          ...(hasMachine ? [lane.who === 'machine' ? decimalMinutes(loadedMs, 3) : '–'] : []),
          decimalMinutes(waitsMs(lane), 3),
          words.percent(formatNumber((100 * lane.workingMs) / roundMs)),
        ])}
      />
    </figure>
  );
}

function nameOf({ who, number }: ActivityLane, machines: number): string {
  return who === 'machine' && machines > 1 ? words.whoNumbered(words.who.machine, number) : words.who[who];
}
