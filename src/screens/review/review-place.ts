/** The questions that Review answers, each at an address of its own; a day has the day for its address. */
export const reviewPlaces = ['day', 'weeks', 'before-after', 'promises'] as const;
export type ReviewPlace = (typeof reviewPlaces)[number];

export function placeOf(id: string): ReviewPlace {
  return reviewPlaces.find((place) => place === id) ?? 'day';
}
