import { groupBy } from '../domain/group-by';
import {
  type ElementSummary,
  type PrecisionAsked,
  summariseStudy,
  usualPrecision,
} from '../domain/study/summarise-study';
import { readReadingsTable } from './read-readings-table';
import type { TableFault } from './table-fault';

/** The figures of a readings table. Times in seconds; null where too few readings were taken to say. */
export interface Recomputed {
  readonly studies: readonly RecomputedStudy[];
}

export interface RecomputedStudy {
  readonly study: string;
  readonly elements: readonly RecomputedElement[];
  readonly normal_time_s: number | null;
  readonly standard_time_s: number | null;
  readonly pieces_per_hour: number | null;
  readonly governing: 'operator' | 'machine' | null;
}

export interface RecomputedElement {
  readonly element: string;
  readonly n: number;
  readonly excluded: number;
  readonly observed_mean_s: number | null;
  readonly observed_sd_s: number | null;
  readonly normal_mean_s: number | null;
  readonly normal_per_unit_s: number | null;
  readonly precision_pct: number | null;
  readonly required_n: Readonly<Record<'t' | 't_pilot' | 'z' | 'ilo', number | null>>;
  readonly required_n_raw: Readonly<Record<'t_pilot' | 'z' | 'ilo', number | null>>;
}

/**
 * Recomputes every study of a readings table from the table alone, with the code that computes it in the
 * app. Studies in the order of the file, elements in the order of their numbers.
 */
export function recomputeTable(
  file: string | Uint8Array,
  asked: PrecisionAsked = usualPrecision,
): { ok: true; recomputed: Recomputed } | { ok: false; faults: readonly TableFault[] } {
  const table = readReadingsTable(file);
  if (!table.ok) return table;
  const studies = [...groupBy(table.rows, ({ study }) => study)].map(([study, rows]): RecomputedStudy => {
    const summary = summariseStudy(rows, asked);
    return {
      study,
      elements: summary.elements.map(recomputedElement),
      normal_time_s: seconds(summary.normalTimeMs),
      standard_time_s: seconds(summary.standardTimeMs),
      pieces_per_hour: summary.piecesPerHour,
      governing: summary.governing,
    };
  });
  return { ok: true, recomputed: { studies } };
}

function recomputedElement(element: ElementSummary): RecomputedElement {
  const { required } = element;
  return {
    element: element.element,
    n: element.n,
    excluded: element.excluded,
    observed_mean_s: seconds(element.observedMeanMs),
    observed_sd_s: seconds(element.observedDeviationMs),
    normal_mean_s: seconds(element.normalMeanMs),
    normal_per_unit_s: seconds(element.normalPerUnitMs),
    precision_pct: element.precision === null ? null : element.precision * 100,
    required_n: {
      t: required?.t ?? null,
      t_pilot: required?.tPilot ?? null,
      z: required?.z ?? null,
      ilo: required?.ilo ?? null,
    },
    required_n_raw: {
      t_pilot: required?.raw.tPilot ?? null,
      z: required?.raw.z ?? null,
      ilo: required?.raw.ilo ?? null,
    },
  };
}

function seconds(milliseconds: number | null): number | null {
  return milliseconds === null ? null : milliseconds / 1000;
}
