// Statistics and the check of the log beside bare floors, in one run:
//   npm run bench:statistics
import * as theirs from 'simple-statistics';
import { figure, timedInTurn } from './figure.mjs';
import { loadSource } from './load-source.mjs';

const { addReading } = await loadSource('src/statistics/add-reading.ts');
const { runningMeanInterval } = await loadSource('src/statistics/running-mean-interval.ts');
const { runningStatistics } = await loadSource('src/statistics/running-statistics.ts');
const { readingsSummary } = await loadSource('src/statistics/readings-summary.ts');
const { sampleStandardDeviation } = await loadSource('src/statistics/sample-standard-deviation.ts');
const { median } = await loadSource('src/statistics/median.ts');
const { seededRandom } = await loadSource('src/statistics/seeded-random.ts');
const { chainOf } = await loadSource('src/domain/records/chain.ts');
const { ChainCheck } = await loadSource('src/domain/records/chain-check.ts');
const { recordAt } = await loadSource('tests/support/records.ts');

const random = seededRandom(1);
const million = Array.from({ length: 1_000_000 }, () => 1 + random());
/** What a call gives is looked at, so that no engine leaves the call out. */
const used = (value) => {
  if (!Number.isFinite(value)) throw new Error('a figure is finite');
};

// One tap gives one update, whose time must not grow with the study.
const UPDATES = 20_000;
const updating = (readings) => {
  const state = million.slice(0, readings).reduce(addReading, runningStatistics);
  return () => {
    let sum = 0;
    for (let update = 0; update < UPDATES; update += 1) {
      sum += runningMeanInterval(addReading(state, 1.5), 0.95).halfWidth;
    }
    used(sum);
  };
};
const [few, many] = timedInTurn([updating(10), updating(10_000)]);
figure({ name: 'a live figure at 10,000 readings, beside 10', ours: many, floor: few, bound: 2 });

const adding = () => {
  let sum = 0;
  for (let i = 0; i < million.length; i += 1) sum += million[i];
  used(sum);
};
// Engines differ from run to run in how well they compile it: the best of many rounds is near what it can be.
const [pass, summary] = timedInTurn([adding, () => used(readingsSummary(million, 0.95).mean)], 100);
figure({ name: 'summary of a million, beside a pass that adds', ours: summary, floor: pass, bound: 5 });

// Ours adds with the rounding kept, and looks at every reading before.
const [theirDeviation, deviation] = timedInTurn([
  () => used(theirs.sampleStandardDeviation(million)),
  () => used(sampleStandardDeviation(million)),
]);
figure({
  name: 'deviation of a million, beside simple-statistics',
  ours: deviation,
  floor: theirDeviation,
  bound: 5,
});

// Ours sorts, theirs selects: on as many readings as a long study has that is little.
const studies = Array.from({ length: 200 }, (_, study) => million.slice(1_000 * study, 1_000 * (study + 1)));
const [theirMedian, ownMedian] = timedInTurn([
  () => used(studies.reduce((sum, readings) => sum + theirs.median(readings), 0)),
  () => used(studies.reduce((sum, readings) => sum + median(readings), 0)),
]);
figure({
  name: 'medians of 1,000 readings, beside simple-statistics',
  ours: ownMedian,
  floor: theirMedian,
  bound: 5,
});

// What opening and the check on Records do with every record.
const done = { kind: 'part-done', part: 't:1', partCode: 'M', targetMs: 90_000 };
let chain = 0;
const records = Array.from({ length: 10_000 }, (_, place) => {
  const record = recordAt(place + 1, place * 1_000, 't:2', done);
  chain = chainOf(record, chain);
  return { ...record, chain };
});
const [written, followed] = timedInTurn([
  () => used(records.reduce((length, record) => length + JSON.stringify(record).length, 0)),
  () => {
    const check = new ChainCheck();
    for (const record of records) check.take(record);
    if (check.breaks.length > 0) throw new Error('the chain is whole');
  },
]);
figure({
  name: 'check of 10,000 records, beside writing them as JSON',
  ours: followed,
  floor: written,
  bound: 2,
});
