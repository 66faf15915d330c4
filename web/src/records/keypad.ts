/** A form of many short choices, answered by one key each. All of it works without, by mouse or by Tab and arrows. */

/** The value that a key gives among these values; null: none. Digits are answers, or tens of them where answers go in tens; t is the highest. */
export function keyed(key: string, values: readonly string[]): string | null {
  if (key === "-") return values.includes("-") ? "-" : null;
  const tens = values.includes("10") && !values.includes("1");
  if (key.toLowerCase() === "t" && tens) return values.includes("100") ? "100" : null;
  if (!/^[0-9]$/.test(key)) return null;
  const value = tens && key !== "0" ? `${key}0` : key;
  return values.includes(value) ? value : null;
}

/** Binds the form: a key answers the item that has the focus, and goes on to the next. */
export function answersByKey(form: HTMLFormElement): void {
  const items = [...form.querySelectorAll<HTMLFieldSetElement>(".items fieldset")];
  const radios = (item: HTMLFieldSetElement): HTMLInputElement[] => [...item.querySelectorAll<HTMLInputElement>("input[type=radio]")];
  const go = (at: number): void => {
    const item = items[at];
    if (item === undefined) return form.querySelector<HTMLButtonElement>("button:not([type=button])")?.focus();
    const own = radios(item);
    (own.find((radio) => radio.checked) ?? own[0])?.focus();
    item.scrollIntoView({ block: "nearest" });
  };
  const hint = form.querySelector<HTMLElement>("[data-keypad-hint]");
  if (hint !== null) hint.hidden = false;
  form.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
    const at = items.findIndex((item) => item.contains(event.target as Node));
    const item = items[at];
    if (item === undefined) return;
    if (event.key === "Backspace") {
      event.preventDefault();
      return go(Math.max(0, at - 1));
    }
    const own = radios(item);
    const value = keyed(
      event.key,
      own.map((radio) => radio.value),
    );
    const radio = own.find((one) => one.value === value);
    if (radio === undefined) return;
    event.preventDefault();
    radio.checked = true;
    radio.dispatchEvent(new Event("input", { bubbles: true }));
    go(at + 1);
  });
}
