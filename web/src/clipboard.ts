/** Whether the clipboard has the text now. A browser may let nobody at it, and has none at all on a page that is not secure. */
export async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
