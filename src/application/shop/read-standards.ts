import { SHOP_STREAM } from '../../domain/records/log-record';
import { foldStandards, type PartStandards } from '../../domain/shop/fold-standards';
import type { Bench } from '../bench';

/** Sizes and standards of the shop's parts, read from the log. */
export async function readStandards(bench: Bench): Promise<ReadonlyMap<string, PartStandards>> {
  return foldStandards(await bench.log.readStream(SHOP_STREAM));
}
