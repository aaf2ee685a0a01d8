/** What only the machine can do for a secret. */
export interface Secrets {
  /** Bytes that nobody can foresee. */
  randomBytes(count: number): Uint8Array<ArrayBuffer>;
  /** 32 bytes from a pass-phrase or a PIN: PBKDF2 with SHA-256. Slow on purpose, so that guessing is slow. */
  stretch(
    secret: string,
    salt: Uint8Array<ArrayBuffer>,
    iterations: number,
  ): Promise<Uint8Array<ArrayBuffer>>;
}
