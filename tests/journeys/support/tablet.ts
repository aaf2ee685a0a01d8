import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { browserArguments, findChromium } from '../../../.config/find-chromium.mjs';

export const landscape = { width: 1280, height: 800 };
export const portrait = { width: 800, height: 1280 };

/**
 * A tablet with storage of its own: a real Chromium with touch that can be closed, or killed in the middle
 * of anything, and started again on the same storage.
 */
export class Tablet {
  /** Where the browser keeps everything: a test may damage what lies in it. */
  readonly profile = mkdtempSync(path.join(tmpdir(), 'pacewright-tablet-'));
  private process: ChildProcess | null = null;
  private browser: Browser | null = null;
  private context: BrowserContext | null = null;

  /** Starts the browser and gives a page, in touch mode, of this size. */
  async start(viewport = landscape): Promise<Page> {
    const child = spawn(
      findChromium()!,
      [
        ...browserArguments,
        '--headless',
        '--remote-debugging-port=0',
        `--user-data-dir=${this.profile}`,
        '--touch-events=enabled',
        'about:blank',
      ],
      { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
    );
    this.process = child;
    this.browser = await chromium.connectOverCDP(await debuggingAddress(child));
    this.context = this.browser.contexts()[0]!;
    const page = this.context.pages()[0] ?? (await this.context.newPage());
    await this.touch(page, viewport);
    return page;
  }

  /** Another tab on the same storage. */
  async newTab(viewport = landscape): Promise<Page> {
    const page = await this.context!.newPage();
    await this.touch(page, viewport);
    return page;
  }

  /** SIGKILL to every process of the browser: nothing gets a chance to tidy up. */
  async kill(): Promise<void> {
    const child = this.process!;
    const gone = new Promise((resolve) => child.once('exit', resolve));
    killGroup(child);
    await gone;
    await this.browser?.close().catch(() => {});
    this.process = null;
  }

  async close(): Promise<void> {
    const child = this.process;
    if (!child) return;
    const gone = new Promise((resolve) => child.once('exit', resolve));
    const session = await this.browser!.newBrowserCDPSession();
    await session.send('Browser.close').catch(() => {});
    const late = setTimeout(() => killGroup(child), 5_000);
    await gone;
    clearTimeout(late);
    this.process = null;
  }

  /** Closes the browser and forgets its storage. */
  async discard(): Promise<void> {
    await this.close();
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }

  private async touch(page: Page, viewport: { width: number; height: number }): Promise<void> {
    const session = await this.context!.newCDPSession(page);
    // A screen that has not answered by then is not coming.
    page.setDefaultTimeout(10_000);
    await session.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 5 });
    await page.setViewportSize(viewport);
  }
}

/** Every process of the browser at once; one that has gone by itself is gone too. */
function killGroup(child: ChildProcess): void {
  try {
    process.kill(-child.pid!, 'SIGKILL');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ESRCH') throw error;
  }
}

function debuggingAddress(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    child.stderr!.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const found = /DevTools listening on (ws:\S+)/.exec(said);
      if (found) resolve(found[1]!);
    });
    child.once('exit', () => reject(new Error(`Chromium left: ${said.slice(-500)}`)));
  });
}
