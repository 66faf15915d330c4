/** That a form led to this page is said once: read again, the page is as it stands. */
export function sayOnce(): void {
  const address = new URL(location.href);
  if (!address.searchParams.has("saved")) return;
  address.searchParams.delete("saved");
  history.replaceState(history.state, "", address);
}
