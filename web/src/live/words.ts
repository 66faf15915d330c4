/** The client's sentences, from the catalogue that the page carries (server/portal/src/words). */

let catalogue: Readonly<Record<string, string>> | undefined;

/**
 * The sentence with this id; `figures` stand where it has their names in braces. Throws when there is none: a page without its words must
 * not go unnoticed.
 */
export function say(id: string, figures: object = {}): string {
  catalogue ??= JSON.parse(document.querySelector<HTMLTemplateElement>("template#words")?.content.textContent ?? "{}") as Record<string, string>;
  const words = catalogue[id];
  if (words === undefined) throw new Error(`No words for "${id}".`);
  return Object.entries(figures).reduce((text, [name, figure]) => text.replace(`{${name}}`, String(figure)), words);
}
