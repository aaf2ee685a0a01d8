import type { Installation } from '../application/ports/installation';
import { installOffer } from './install-offer';

export const pageInstallation: Installation = {
  way() {
    // The property is Apple's own, and only the browsers of its tablets and phones have it.
    const { standalone } = navigator as Navigator & { readonly standalone?: boolean };
    if (standalone || installOffer.taken) return 'installed';
    if (!matchMedia('(display-mode: browser)').matches) return 'installed';
    if (installOffer.event) return 'offered';
    return standalone === undefined ? 'menu' : 'share';
  },
  async install() {
    const { event } = installOffer;
    installOffer.event = null;
    installOffer.taken = (await event?.prompt())?.outcome === 'accepted';
    return installOffer.taken;
  },
};
