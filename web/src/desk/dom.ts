// Small tools for drawing: every change of the page goes through these, and only real changes touch it.
export { text } from "../live/element";

/** The element that carries `data-part`; its absence is a fault of the template and says so. */
export function part<T extends Element = HTMLElement>(name: string): T {
  const found = document.querySelector<T>(`[data-part="${name}"]`);
  if (found === null) throw new Error(`The page has no part named ${name}.`);
  return found;
}

export function attribute(element: Element, name: string, value: string | null): void {
  if (value === null) element.removeAttribute(name);
  else if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

export function shown(element: HTMLElement, visible: boolean): void {
  if (element.hidden === visible) element.hidden = !visible;
}

/** A new element with text and attributes. */
export function make<K extends keyof HTMLElementTagNameMap>(tag: K, words: string, attributes: Record<string, string> = {}): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  element.textContent = words;
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}

/** A new SVG element. */
export function makeSvg(tag: string, attributes: Record<string, string | number>, words?: string): SVGElement {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
  if (words !== undefined) element.textContent = words;
  return element;
}
