import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { top } from '../../../.config/prepare.mjs';
import { type Served, serve } from '../../../.config/serve.mjs';

/** A web server with a copy of the built app, which a test can stop, start again, and give another release. */
export class Site {
  private readonly folder = mkdtempSync(path.join(tmpdir(), 'pacewright-site-'));
  private served: Served | null = null;
  private port = 0;

  constructor(dist: string) {
    this.publish(dist);
  }

  get url(): string {
    return `http://127.0.0.1:${this.port}/`;
  }

  async start(): Promise<void> {
    // Compressing a whole release takes longer than fetching it.
    this.served = await serve({ folder: this.folder, port: this.port, isCompressed: false });
    this.port = Number(new URL(this.served.url).port);
  }

  async stop(): Promise<void> {
    await this.served?.close();
    this.served = null;
  }

  /** Puts a release on the server, its files first and its service worker last. */
  publish(dist: string): void {
    cpSync(dist, this.folder, { recursive: true });
  }

  /** The same, and what was there before is gone, as with most hosts. */
  replace(dist: string): void {
    rmSync(this.folder, { recursive: true });
    this.publish(dist);
  }

  /** One file, as it is. */
  put(file: string, text: string): void {
    writeFileSync(path.join(this.folder, file), text);
  }

  /** Puts the worker in the place of every other that does nothing, as after a bad release. */
  withdraw(): void {
    cpSync(path.join(top, 'service-worker/no-op.js'), path.join(this.folder, 'sw.js'));
  }

  /** Takes one file away, as a half-finished publication would. */
  remove(file: string): void {
    rmSync(path.join(this.folder, file), { recursive: true });
  }

  async discard(): Promise<void> {
    await this.stop();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
