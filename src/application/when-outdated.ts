import type { Bench } from './bench';

/** Calls once a newer release has changed the database under this page: what it wrote there, nobody could read. */
export function whenOutdated(bench: Bench, call: () => void): void {
  const stop = bench.saving.subscribe(({ problem }) => {
    if (!problem.startsWith('VersionError')) return;
    queueMicrotask(() => stop());
    call();
  });
}
