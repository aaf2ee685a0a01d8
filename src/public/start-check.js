// Runs without the bundle. When the app has not begun after ten seconds, or its script cannot be fetched, the
// page says so and leads to where the records can be saved.
(() => {
  const PATIENCE_MS = 10_000;

  function say() {
    const app = document.getElementById('app');
    if (!app) return addEventListener('DOMContentLoaded', say, { once: true });
    if (app.childElementCount > 0 || document.getElementById('start-check')) return;
    const note = document.createElement('main');
    note.id = 'start-check';
    const told = document.createElement('div');
    told.setAttribute('role', 'alert');
    const text = document.createElement('h1');
    told.append(text);
    text.textContent = 'The app did not start. Your records have not been deleted.';
    const again = document.createElement('p');
    const reload = document.createElement('a');
    reload.href = location.pathname;
    reload.textContent = 'Try again';
    again.append(reload);
    const rescue = document.createElement('p');
    const link = document.createElement('a');
    link.href = 'rescue.html';
    link.textContent = 'Save all records as a file, without the app';
    rescue.append(link);
    note.append(told, again, rescue);
    document.body.prepend(note);
    // A slow app that begins after all needs no note.
    const watching = new MutationObserver(() => {
      if (app.childElementCount === 0) return;
      note.remove();
      watching.disconnect();
    });
    watching.observe(app, { childList: true });
  }

  setTimeout(say, PATIENCE_MS);
  addEventListener(
    'error',
    (event) => {
      if (event.target instanceof HTMLScriptElement) say();
    },
    true,
  );
})();
