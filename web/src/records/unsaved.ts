/** A form that was changed asks once before its page is left, and a form that was refused begins at what is to be mended. */

/**
 * Binds `form`: what a browser asks before it leaves a page is its own question, in its own words. What came back without being saved is
 * still only here.
 */
export function asksBeforeLeaving(form: HTMLFormElement): void {
  let changed = document.body.dataset["notSaved"] !== undefined;
  form.addEventListener("input", () => {
    changed = true;
  });
  form.addEventListener("submit", () => {
    changed = false;
  });
  addEventListener("beforeunload", (event) => {
    if (changed) event.preventDefault();
  });
}

/** Moves the focus to the summary of what was refused, so that it is read first. */
export function beginAtTheSummary(): void {
  const summary = document.querySelector<HTMLElement>('[role="alert"]');
  if (!summary) return;
  summary.tabIndex = -1;
  summary.focus();
}
