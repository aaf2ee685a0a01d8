/** What the ratios of ISO 22400-2 are made of. Times in any one unit, quantities in parts. */
export interface RatioElements {
  /** Planned busy time. */
  readonly PBT: number;
  /** Actual production time. */
  readonly APT: number;
  /** Actual unit set-up time. */
  readonly AUST: number;
  /** Actual unit delay time. */
  readonly ADET: number;
  /** Actual order execution time: from the first record to the last. */
  readonly AOET: number;
  /** Actual personnel work time, and attendance without breaks. */
  readonly APWT: number;
  readonly APAT: number;
  /** Planned run time per item. */
  readonly PRI: number;
  /** Produced, good, scrap, rework, good the first time, and inspected quantity. */
  readonly PQ: number;
  readonly GQ: number;
  readonly SQ: number;
  readonly RQ: number;
  readonly GP: number;
  readonly IP: number;
}

/** Each under the name that the standard gives it; null where there is nothing to divide by. */
export interface StandardRatios {
  readonly workerEfficiency: number | null;
  readonly throughputRate: number | null;
  readonly allocationEfficiency: number | null;
  readonly utilizationEfficiency: number | null;
  readonly availability: number | null;
  readonly effectiveness: number | null;
  readonly qualityRatio: number | null;
  readonly overallEquipmentEffectiveness: number | null;
  readonly netEquipmentEffectiveness: number | null;
  readonly setUpRatio: number | null;
  readonly technicalEfficiency: number | null;
  readonly firstPassYield: number | null;
  readonly scrapRatio: number | null;
  readonly reworkRatio: number | null;
}

/**
 * Key figures of ISO 22400-2 under their standard names.
 *
 * Formulas, with AUPT = APT + AUST and AUBT = AUPT + ADET:
 *   worker efficiency APWT/APAT, throughput rate PQ/AOET, allocation efficiency AUBT/PBT,
 *   utilization efficiency APT/AUBT, availability APT/PBT, effectiveness PRI·PQ/APT, quality ratio GQ/PQ,
 *   OEE index availability·effectiveness·quality ratio, NEE index AUPT/PBT·effectiveness·quality ratio,
 *   set-up ratio AUST/AUPT, technical efficiency APT/(APT + ADET), first-pass yield GP/IP,
 *   scrap ratio SQ/PQ, rework ratio RQ/PQ
 * Source: ISO 22400-2:2014, as two public implementations give its formulas; the standard's own text was not read.
 *
 * Worker efficiency here is time worked over time attended, not standard over actual time (Z94 calls that labor
 * efficiency): print the formula with it.
 */
export function standardRatios(of: RatioElements): StandardRatios {
  const aupt = of.APT + of.AUST;
  const aubt = aupt + of.ADET;
  const availability = ratio(of.APT, of.PBT);
  const effectiveness = ratio(of.PRI * of.PQ, of.APT);
  const qualityRatio = ratio(of.GQ, of.PQ);
  return {
    workerEfficiency: ratio(of.APWT, of.APAT),
    throughputRate: ratio(of.PQ, of.AOET),
    allocationEfficiency: ratio(aubt, of.PBT),
    utilizationEfficiency: ratio(of.APT, aubt),
    availability,
    effectiveness,
    qualityRatio,
    overallEquipmentEffectiveness: product(availability, effectiveness, qualityRatio),
    netEquipmentEffectiveness: product(ratio(aupt, of.PBT), effectiveness, qualityRatio),
    setUpRatio: ratio(of.AUST, aupt),
    technicalEfficiency: ratio(of.APT, of.APT + of.ADET),
    firstPassYield: ratio(of.GP, of.IP),
    scrapRatio: ratio(of.SQ, of.PQ),
    reworkRatio: ratio(of.RQ, of.PQ),
  };
}

function ratio(above: number, below: number): number | null {
  return below > 0 ? above / below : null;
}

function product(...factors: readonly (number | null)[]): number | null {
  return factors.reduce((sum, factor) => (sum === null || factor === null ? null : sum * factor), 1);
}
