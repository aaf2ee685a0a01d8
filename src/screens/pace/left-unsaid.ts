import { signal } from '@preact/signals';

/** Key of the stoppage of which somebody said that nothing is to be said: it is not asked about beside the figures. */
export const leftUnsaid = signal('');
