import type { Secrets } from '../application/ports/secrets';

/** The browser's cryptography; null where it has none, as on a page that came over plain http. */
export function webSecrets(): Secrets | null {
  const { crypto } = globalThis;
  if (!crypto?.subtle) return null;
  return {
    randomBytes: (count) => crypto.getRandomValues(new Uint8Array(count)),
    async stretch(secret, salt, iterations) {
      const bytes = new TextEncoder().encode(secret);
      const key = await crypto.subtle.importKey('raw', bytes, 'PBKDF2', false, ['deriveBits']);
      const how = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations };
      return new Uint8Array(await crypto.subtle.deriveBits(how, key, 256));
    },
  };
}
