/** What Chromium has beyond the standard, and the compiler's library therefore lacks. */
export interface InstallOffer extends Event {
  prompt(): Promise<{ readonly outcome: 'accepted' | 'dismissed' }>;
}

/** The browser makes its offer once, and early: it is kept until somebody wants it. */
export const installOffer: { taken: boolean; event: InstallOffer | null } = { taken: false, event: null };

/** Keeps the offer, so that no banner of the browser comes over the work. */
export function keepInstallOffer(): void {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    installOffer.event = event as InstallOffer;
  });
}
