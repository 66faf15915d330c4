/** Whether the clipboard has the text now; a browser may let nobody at it. */
export function copied(text: string): Promise<boolean> {
  return navigator.clipboard.writeText(text).then(
    () => true,
    () => false,
  );
}
