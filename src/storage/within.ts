/** The work's answer, or a TimeoutError when there is none within this time: the work itself goes on. */
export function within<Result>(patienceMs: number, work: Promise<Result>): Promise<Result> {
  let timer: ReturnType<typeof setTimeout>;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new DOMException('no answer', 'TimeoutError')), patienceMs);
  });
  return Promise.race([work, late]).finally(() => clearTimeout(timer));
}
