import { BalanceBars } from '../../charts/balance-bars';
import type { WorkBalance } from '../../domain/cell/balance-work';
import type { CellElement } from '../../domain/cell/cell-work';
import { decimalMinutes } from '../../i18n/decimal-time';
import { cell as words } from '../../i18n/en/cell';
import { cellPeople as says } from '../../i18n/en/cell-people';
import { formatNumber } from '../../i18n/format-number';
import { useWidth } from '../review/use-width';
import { FigureRow } from './figure-row';
import type { ReckonedPart } from './reckon-parts';

interface Props {
  readonly shared: Extract<WorkBalance, { ok: true }>;
  readonly leftMs: number;
  readonly part: ReckonedPart;
}

const min = (ms: number) => words.minutes(decimalMinutes(ms, 3));
const percent = (share: number) => words.percent(formatNumber(100 * share, 1));
const pieceOf = ({ name, place, meanMs }: CellElement) => ({
  name,
  amount: meanMs / 60_000,
  isMachine: place === 'machine',
});

/** The balance chart: a bar for each person, and one for the machine with what loads it, beside the takt that is left. */
export function WorkShared({ shared: { stations, balance }, leftMs, part }: Props) {
  const { ref, width } = useWidth();
  const { elements } = part.work;
  const bars = stations.map((own, place) => ({
    title: says.person(place + 1),
    pieces: own.elements.map(pieceOf),
    p80: own.p80Ms / 60_000,
  }));
  const machine = elements.filter(({ place }) => place === 'machine');
  const loading = elements.filter(({ place }) => place === 'external');
  const machineBar = { title: says.machine, pieces: [...loading, ...machine].map(pieceOf), p80: null };
  const figures = [
    [says.figures.minimum, formatNumber(balance.minimumStations)],
    [says.figures.efficiencyTakt, percent(balance.efficiencyByTakt)],
    [says.figures.delayTakt, percent(balance.delayByTakt)],
    [says.figures.efficiencyLongest, percent(balance.efficiencyByLongest)],
    [says.figures.delayLongest, percent(balance.delayByLongest)],
  ] as const;
  return (
    <>
      <div ref={ref}>
        {width > 0 && (
          <BalanceBars
            id="cell-balance"
            title={says.chart}
            description={stations
              .map(({ totalMs }, place) => says.barSays(says.person(place + 1), min(totalMs)))
              .join(' ')}
            width={width}
            bars={machine.length > 0 ? [...bars, machineBar] : bars}
            takt={{ at: leftMs / 60_000, text: says.takt(min(leftMs)) }}
            p80Text={says.p80}
            tickText={formatNumber}
          />
        )}
      </div>
      <FigureRow figures={figures} />
    </>
  );
}
