import { signal } from '@preact/signals';

/** The way through the demo shop was asked for or put away since the page was opened; null: neither. */
export const guideShown = signal<boolean | null>(null);

/** In the jotter: it was put away here. */
export const GUIDE_PLACE = 'guide-away';
