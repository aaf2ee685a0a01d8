import type { AgainstTarget } from '../../domain/day/against-target';
import { FEW_PARTS } from '../../domain/day/few-parts';
import type { PartOfDay } from '../../domain/day/part-of-day';
import { decimalMinutes, decimalSeconds } from '../../i18n/decimal-time';
import { reviewWorking as says } from '../../i18n/en/review-working';
import { formatNumber } from '../../i18n/format-number';
import { roundedClockFace } from '../../i18n/rounded-clock-face';
import { againstTargetText } from './against-target-text';
import type { Working } from './working';

/** Every net cycle of a part, so that a figure can be worked out again by hand. */
function netCycles({ netTimesMs }: PartOfDay): NonNullable<Working['numbers']> {
  return { title: says.seconds, values: netTimesMs.map((ms) => decimalSeconds(ms)) };
}

export function countWorking(part: PartOfDay): Working {
  const { title, says: sense, put } = says.count;
  return {
    title: title(part.partCode),
    says: sense,
    ...(part.counted < part.n ? { put: put(part.counted, part.n) } : {}),
  };
}

export function meanWorking(part: PartOfDay): Working {
  if (part.meanMs === null) return { title: says.mean.title(part.partCode), says: says.mean.none };
  const sumMs = part.netTimesMs.reduce((sum, ms) => sum + ms, 0);
  return {
    title: says.mean.title(part.partCode),
    says: says.mean.says,
    formula: says.mean.formula,
    put: says.mean.put(
      decimalMinutes(sumMs),
      part.counted,
      decimalMinutes(part.meanMs, 3),
      roundedClockFace(part.meanMs),
    ),
    numbers: netCycles(part),
  };
}

export function spreadWorking(part: PartOfDay): Working {
  const { meanMs, deviationMs, shortestMs, longestMs, counted } = part;
  if (counted < FEW_PARTS || meanMs === null || deviationMs === null) {
    const title = says.range.title(part.partCode);
    if (shortestMs === null || longestMs === null) return { title, says: says.mean.none };
    if (counted === 1) return { title, says: says.range.one, numbers: netCycles(part) };
    return {
      title,
      says: says.range.says,
      formula: says.range.formula,
      put: `${roundedClockFace(shortestMs)} – ${roundedClockFace(longestMs)}`,
      numbers: netCycles(part),
    };
  }
  return {
    title: says.deviation.title(part.partCode),
    says: says.deviation.says,
    formula: says.deviation.formula,
    put: says.deviation.put(counted, decimalMinutes(meanMs, 3), decimalMinutes(deviationMs, 3)),
    numbers: netCycles(part),
  };
}

export function targetWorking(part: PartOfDay): Working {
  const { title, says: sense, changed, none } = says.target;
  const about = part.targetMs === null ? none : sense;
  return {
    title: title(part.partCode),
    says: part.targetChanged ? `${about} ${changed}` : about,
    ...(part.targetMs === null
      ? {}
      : { put: `${roundedClockFace(part.targetMs)} = ${decimalMinutes(part.targetMs, 3)} min` }),
  };
}

/** Of one part, or of all parts of the day when no code is given. */
export function shareWorking(of: AgainstTarget, partCode?: string): Working {
  return {
    title: partCode === undefined ? says.share.all : says.share.title(partCode),
    says: says.share.says,
    formula: says.share.formula,
    put: says.share.put({
      net: decimalMinutes(of.netMs),
      target: decimalMinutes(of.targetMs),
      share: formatNumber(of.share * 100, 1),
      n: of.n,
      scrap: of.n - of.good,
      against: againstTargetText(of.share),
    }),
  };
}

export function outcomeWorking({ partCode, good, rework, scrap, n }: PartOfDay): Working {
  const { title, says: sense, put } = says.outcome;
  return { title: title(partCode), says: sense, put: put(good, rework, scrap, n) };
}
