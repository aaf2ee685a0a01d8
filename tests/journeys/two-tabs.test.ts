import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { violations } from './support/axe';
import { beginFirstTurn, partDone, saved } from './support/pace-steps';
import { readOwnLog } from './support/read-own-log';
import { Site } from './support/site';
import { Tablet } from './support/tablet';
import { tapButton } from './support/tap';

const readsOnly = 'Another tab of Pacewright is recording. This one only reads.';

describe('a second tab on the same tablet', () => {
  const site = new Site(inject('dist'));
  const tablet = new Tablet();
  let first: Page;
  let second: Page;

  beforeAll(async () => {
    await site.start();
    first = await tablet.start();
    await first.goto(site.url);
    await beginFirstTurn(first, 'K7', 'M', '1:30');
    await saved(first);
  });
  afterAll(async () => {
    await tablet.discard();
    await site.discard();
  });

  it('says that it only reads, and records nothing', async () => {
    second = await tablet.newTab();
    await second.goto(site.url);
    await second.getByText(readsOnly).waitFor();
    expect(await violations(second)).toEqual([]);
    const before = await readOwnLog(second);
    await second.getByRole('button', { name: /^Part done/ }).click({ force: true });
    await second.waitForTimeout(300);
    const facts = (await readOwnLog(second)).map(({ fact }) => fact);
    expect(facts).toEqual(before.map(({ fact }) => fact));
  });

  it('takes over when it is told twice; then the first one only reads', async () => {
    await tapButton(second, 'Record here instead');
    await tapButton(second, 'Yes, record here');
    await second.getByText(readsOnly).waitFor({ state: 'detached' });
    await first.bringToFront();
    await first.getByText(readsOnly).waitFor();
    await second.bringToFront();
    await second.waitForTimeout(1_600);
    await partDone(second);
    await saved(second);
    const records = await readOwnLog(second);
    expect(records.at(-1)?.fact.kind).toBe('part-done');
    expect(records.map(({ sequence }) => sequence)).toEqual(records.map((_, place) => place + 1));
  });

  it('is the writer alone after the first one was closed, and a third one reads', async () => {
    await first.close();
    const third = await tablet.newTab();
    await third.goto(site.url);
    await third.getByText(readsOnly).waitFor();
  });
});
