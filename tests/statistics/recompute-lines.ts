import { lineBalance } from '../../src/statistics/line-balance';
import { lotMakespan } from '../../src/statistics/lot-makespan';
import { partsInside } from '../../src/statistics/parts-inside';
import { randomServicing } from '../../src/statistics/random-servicing';
import { type ServicingCost, servicingCost } from '../../src/statistics/servicing-cost';
import { synchronousServicing } from '../../src/statistics/synchronous-servicing';
import { taktTime } from '../../src/statistics/takt-time';

/** What the printed answers on machines served, lines, lots and flow are recomputed with. */
export const recomputeLines = {
  'mm.tompkins': servicingAnswers,
  'mm.groover': servicingAnswers,
  'mm.random': ({ machines, shareDown, hours }: { machines: number; shareDown: number; hours: number }) => {
    const { down, lostShare } = randomServicing(machines, shareDown);
    const atLeast3 = down.slice(3).reduce((sum, chance) => sum + chance, 0);
    return { down, atLeast3, lostHours: lostShare * machines * hours, lostPct: 100 * lostShare };
  },
  line: (i: { stations: number[]; available: number; demand: number; minutes?: number }) => {
    const takt = taktTime(i.available, i.demand);
    const balance = lineBalance(i.stations, takt);
    return {
      ...balance,
      takt,
      idlePct: 100 * balance.delayByLongest,
      output: (i.minutes ?? 0) / balance.longest,
    };
  },
  'flow.onepiece': ({ lot, stages }: { lot: number; stages: number[] }) => lotMakespan(lot, stages),
  'flow.little': (i: { rate: number; leadTime: number }) => ({ inside: partsInside(i.rate, i.leadTime) }),
};

function servicingAnswers({ unit, ...plan }: ServicingCost & { unit: number }) {
  const round = synchronousServicing(plan);
  return {
    ...round,
    cost: servicingCost(plan) / unit,
    idlePct: (100 * round.operatorIdle) / round.cycle,
    perHour: (plan.machines * unit) / round.cycle,
  };
}
