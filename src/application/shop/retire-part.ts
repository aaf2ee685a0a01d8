import { SHOP_STREAM } from '../../domain/records/log-record';
import type { Bench } from '../bench';

/** Takes a part out of use, or back into it. Its records stay. */
export function retirePart(bench: Bench, part: string, retired: boolean): void {
  bench.record(SHOP_STREAM, [{ kind: 'part-retired', part, retired }]);
}
