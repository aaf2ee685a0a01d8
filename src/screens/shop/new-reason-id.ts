/**
 * An id for a reason of the shop's own, made from the moment it is added: a reason that was left out long ago must
 * not come back to life under another's words, so a counter over those in use would not do.
 */
export function newReasonId(reasons: readonly { readonly id: string }[], wallMs: number): string {
  let moment = wallMs;
  const idOf = () => `own-${moment.toString(36)}`;
  while (reasons.some(({ id }) => id === idOf())) moment += 1;
  return idOf();
}
