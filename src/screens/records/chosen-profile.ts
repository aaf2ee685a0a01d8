import { computed, signal } from '@preact/signals';
import type { TableForm } from '../../exchange/join-table';
import type { TableProfile } from '../../exchange/table-profile';

/** Which marks the tables use that leave the tablet: as chosen on Records, for as long as the page lives. */
export const chosenProfile = signal<TableProfile>('point');

/** A comma table is for a spreadsheet, which reads accents wrong without the mark in front. */
export const chosenForm = computed<TableForm>(() => ({
  profile: chosenProfile.value,
  byteOrderMark: chosenProfile.value === 'comma',
}));
