import { describe, expect, it } from 'vitest';
import { Bench } from '../../../src/application/bench';
import { checkPin } from '../../../src/application/latch/check-pin';
import { bytesOf, hexadecimal } from '../../../src/application/latch/hexadecimal';
import { setPin } from '../../../src/application/latch/set-pin';
import { webSecrets } from '../../../src/device/web-secrets';
import { InMemoryRecordLog } from '../../../src/storage/in-memory-record-log';
import { everythingIn, quickSecrets } from '../../support/backup-files';
import { FakeClock } from '../../support/fake-clock';

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

async function latched(secrets = quickSecrets()) {
  const log = new InMemoryRecordLog('t');
  const clock = new FakeClock();
  const bench = await Bench.open(log, clock);
  await setPin(bench, secrets, '4711', '');
  await settled();
  /** Tries a PIN a second after the one before it. */
  const tries = async (pin: string) => {
    clock.pass(1_000);
    const answer = await checkPin(bench, secrets, pin);
    await settled();
    return answer;
  };
  return { bench, clock, log, secrets, tries };
}

describe('the supervisor’s PIN', () => {
  it('is any while none is set, and then the one', async () => {
    const log = new InMemoryRecordLog('t');
    const bench = await Bench.open(log, new FakeClock());
    expect(bench.shop.value.isLatched).toBe(false);
    expect(await checkPin(bench, quickSecrets(), '')).toEqual({ ok: true });
    const { tries, bench: set } = await latched();
    expect(set.shop.value.isLatched).toBe(true);
    expect(await tries('4711')).toEqual({ ok: true });
    expect(await tries('4712')).toEqual({ ok: false, reason: 'wrong', waitMs: 0 });
  });

  it('is nowhere in the log: only a salt of its own and what PBKDF2 makes of both', async () => {
    const { log } = await latched();
    const text = JSON.stringify(await everythingIn(log));
    expect(text).not.toContain('4711');
    const other = await latched();
    await setPin(other.bench, other.secrets, '4711', '4711');
    await settled();
    const hashes = (await everythingIn(other.log)).flatMap(({ fact }) =>
      fact.kind === 'pin-set' ? [fact.hash] : [],
    );
    expect(new Set(hashes).size).toBe(2);
  });

  it('works with the machine’s own PBKDF2', async () => {
    const { tries } = await latched(webSecrets()!);
    expect(await tries('4711')).toEqual({ ok: true });
    expect(await tries('0000')).toMatchObject({ ok: false, reason: 'wrong' });
  });

  it('is not taken for a while after three wrong ones, the right one neither, nor after a reload', async () => {
    const { tries, clock, log, secrets } = await latched();
    await tries('0001');
    await tries('0002');
    expect(await tries('0003')).toEqual({ ok: false, reason: 'wrong', waitMs: 30_000 });
    expect(await tries('4711')).toEqual({ ok: false, reason: 'wait', waitMs: 29_000 });
    clock.reload(9_000);
    const again = await Bench.open(log, clock);
    expect(await checkPin(again, secrets, '4711')).toEqual({ ok: false, reason: 'wait', waitMs: 20_000 });
    clock.pass(20_000);
    expect(await checkPin(again, secrets, '4711')).toEqual({ ok: true });
    await settled();
    expect(await checkPin(again, secrets, '0004')).toEqual({ ok: false, reason: 'wrong', waitMs: 0 });
  });

  it('is asked for before it is changed or taken away', async () => {
    const { bench, secrets, tries } = await latched();
    expect(await setPin(bench, secrets, '1234', '0000')).toMatchObject({ ok: false, reason: 'wrong' });
    expect(await setPin(bench, secrets, null, '0000')).toMatchObject({ ok: false });
    await settled();
    expect(bench.shop.value.isLatched).toBe(true);
    expect(await tries('4711')).toEqual({ ok: true });
    expect(await setPin(bench, secrets, '1234', '4711')).toEqual({ ok: true });
    await settled();
    expect(await tries('4711')).toMatchObject({ ok: false });
    expect(await setPin(bench, secrets, null, '1234')).toEqual({ ok: true });
    await settled();
    expect(bench.shop.value.isLatched).toBe(false);
  });

  it('is four to twelve digits', async () => {
    const { bench, secrets } = await latched();
    for (const pin of ['', '123', '1234567890123', '12a4', '１２３４']) {
      await expect(setPin(bench, secrets, pin, '4711')).rejects.toThrow(
        new RangeError('setPin requires four to twelve digits'),
      );
    }
  });
});

describe('hexadecimal', () => {
  it('is two digits a byte, and reads back', () => {
    const bytes = Uint8Array.from({ length: 256 }, (_, value) => value);
    // By Node's own encoding.
    expect(hexadecimal(bytes)).toBe(Buffer.from(bytes).toString('hex'));
    expect(bytesOf(hexadecimal(bytes))).toEqual(bytes);
  });
});
