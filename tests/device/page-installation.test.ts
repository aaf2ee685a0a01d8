import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { installOffer, keepInstallOffer } from '../../src/device/install-offer';
import { pageInstallation } from '../../src/device/page-installation';

let window: EventTarget;

beforeEach(() => {
  window = new EventTarget();
  Object.assign(installOffer, { event: null, taken: false });
  vi.stubGlobal('addEventListener', window.addEventListener.bind(window));
  runsIn('browser');
});
afterEach(() => {
  vi.unstubAllGlobals();
});

function runsIn(mode: string, navigator: object = {}): void {
  vi.stubGlobal('navigator', navigator);
  vi.stubGlobal('matchMedia', (query: string) => ({ matches: query === `(display-mode: ${mode})` }));
}

function offer(outcome: 'accepted' | 'dismissed'): Event {
  const event = new Event('beforeinstallprompt', { cancelable: true });
  return Object.assign(event, { prompt: async () => ({ outcome }) });
}

describe('the way to install the app', () => {
  it('is none where it runs as one already, on any system', () => {
    runsIn('standalone');
    expect(pageInstallation.way()).toBe('installed');
    runsIn('fullscreen');
    expect(pageInstallation.way()).toBe('installed');
    runsIn('browser', { standalone: true });
    expect(pageInstallation.way()).toBe('installed');
  });

  it('is the share sheet in a tab of an iPad or iPhone, and a menu where the browser offers nothing', () => {
    runsIn('browser', { standalone: false });
    expect(pageInstallation.way()).toBe('share');
    runsIn('browser');
    expect(pageInstallation.way()).toBe('menu');
  });

  it('is the browser’s own offer, which is kept from coming over the work', async () => {
    keepInstallOffer();
    const event = offer('accepted');
    window.dispatchEvent(event);
    expect(event.defaultPrevented).toBe(true);
    expect(pageInstallation.way()).toBe('offered');
    expect(await pageInstallation.install()).toBe(true);
    expect(pageInstallation.way()).toBe('installed');
  });

  it('is the menu again after the offer was declined: it can be taken once', async () => {
    keepInstallOffer();
    window.dispatchEvent(offer('dismissed'));
    expect(await pageInstallation.install()).toBe(false);
    expect(pageInstallation.way()).toBe('menu');
  });
});
