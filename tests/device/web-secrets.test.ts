import { describe, expect, it } from 'vitest';
import { webSecrets } from '../../src/device/web-secrets';

const secrets = webSecrets()!;

describe('webSecrets', () => {
  it('stretches as published: PBKDF2 with HMAC-SHA-256', async () => {
    const salt = (text: string) => new TextEncoder().encode(text);
    const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');
    // RFC 7914, section 11: the first 32 of its 64 bytes, which PBKDF2 makes independently of the rest.
    expect(hex(await secrets.stretch('passwd', salt('salt'), 1))).toBe(
      '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc',
    );
    expect(hex(await secrets.stretch('Password', salt('NaCl'), 80_000))).toBe(
      '4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56',
    );
  });

  it('draws as many bytes as asked, and others each time', () => {
    const [first, second] = [secrets.randomBytes(16), secrets.randomBytes(16)];
    expect(first).toHaveLength(16);
    expect(first).not.toEqual(second);
  });
});
