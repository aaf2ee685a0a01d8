import { describe, expect, it } from 'vitest';
import { ratioElements } from '../../../src/domain/day/ratio-elements';
import { standardRatios } from '../../../src/domain/day/standard-ratios';
import { summariseDay } from '../../../src/domain/day/summarise-day';
import { done, partM, turnOf } from './turn-of-day';

/** Constructed numbers for the formulas of ISO 22400-2; the answers were worked out apart from this program. */
const constructed = {
  PBT: 420,
  ADET: 40,
  AUST: 20,
  APT: 340,
  PRI: 0.8,
  PQ: 400,
  GQ: 388,
  SQ: 8,
  RQ: 4,
  GP: 384,
  IP: 400,
  APWT: 390,
  APAT: 430,
  AOET: 480,
};

describe('the ratios of ISO 22400-2', () => {
  it('have the constructed answers, each under its standard name', () => {
    const answers: Record<string, number> = {
      availability: 0.8095238095238095,
      effectiveness: 0.9411764705882353,
      qualityRatio: 0.97,
      overallEquipmentEffectiveness: 0.739047619047619,
      allocationEfficiency: 0.9523809523809523,
      utilizationEfficiency: 0.85,
      technicalEfficiency: 0.8947368421052632,
      setUpRatio: 0.05555555555555555,
      workerEfficiency: 0.9069767441860465,
      throughputRate: 0.8333333333333334,
      firstPassYield: 0.96,
      scrapRatio: 0.02,
      reworkRatio: 0.01,
    };
    const ratios = standardRatios(constructed);
    for (const [name, answer] of Object.entries(answers)) {
      expect(ratios[name as keyof typeof ratios], name).toBeCloseTo(answer, 12);
    }
  });

  it('make the OEE index what was planned for the good parts over the planned busy time', () => {
    const { PRI, GQ, PBT } = constructed;
    expect(standardRatios(constructed).overallEquipmentEffectiveness).toBeCloseTo((PRI * GQ) / PBT, 12);
  });

  it('are null, and never a division by zero, where nothing was done', () => {
    const nothing = Object.fromEntries(Object.keys(constructed).map((name) => [name, 0]));
    const ratios = standardRatios(nothing as unknown as typeof constructed);
    expect(Object.values(ratios).every((ratio) => ratio === null)).toBe(true);
  });

  it('are told of a day only when every part carried a target', () => {
    const of = (targetMs: number | null) => {
      const turn = turnOf([[100, done({ ...partM, targetMs })]]);
      return ratioElements(summariseDay('2026-03-02', [{ turn, absorbedMs: new Map(), breaks: [] }], null));
    };
    expect(of(null)).toBeNull();
    expect(of(90_000)).toMatchObject({ PQ: 1, PRI: 90_000, APT: 100_000, PBT: 100_000 });
  });

  it('allocate no more time than there was, though work went on through a planned rest', () => {
    const turn = turnOf([[7_200, done()]]);
    const rest = { fromMs: 600_000, toMs: 1_200_000 };
    const day = summariseDay('2026-03-02', [{ turn, absorbedMs: new Map(), breaks: [rest] }], null);
    expect(standardRatios(ratioElements(day)!).allocationEfficiency).toBe(1);
  });
});
