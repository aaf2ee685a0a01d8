/** Calls whenever the page is seen again, also where the browser had put it away whole. */
export function onPageReturn(call: () => void): void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') call();
  });
  addEventListener('pageshow', ({ persisted }) => {
    if (persisted) call();
  });
}
