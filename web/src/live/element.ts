/** Makes elements without markup, as strict pages need it. */

/** What an element is given: attributes, or a handler for a click. */
export interface Given {
  readonly class?: string;
  readonly id?: string;
  readonly onclick?: () => void;
  readonly [attribute: string]: string | number | boolean | (() => void) | undefined;
}

/** An element with these attributes and children. `false` and `undefined` leave an attribute out. */
export function element<K extends keyof HTMLElementTagNameMap>(tag: K, given: Given = {}, ...children: (Node | string)[]): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(given)) {
    if (typeof value === "function") made.addEventListener(name.slice(2), value);
    else if (value !== undefined && value !== false) made.setAttribute(name, value === true ? "" : String(value));
  }
  made.append(...children);
  return made;
}

/** Says `words` there; the page is touched only when they are others. */
export function text(element: Element, words: string): void {
  if (element.textContent !== words) element.textContent = words;
}
