/**
 * A list that is put in order by hand: a row is drawn to its place with the pointer. What it does is what its buttons do, one step at a time:
 * the form of the row is sent with the place where it was let go. By keyboard and without a script there are the buttons.
 */

/** The pointer has to travel this far before a press is a draw, px. */
const TRAVEL = 6;

/** Where a row goes that is let go at `y`, from 1: `middles` are those of the other rows, from the top. */
export function placeAt(y: number, middles: readonly number[]): number {
  return middles.filter((middle) => middle < y).length + 1;
}

/** Binds a table whose rows each hold a form with the fields `target` and, by its buttons, `to`. */
export function putsInOrder(table: HTMLTableElement): void {
  const rows = [...table.querySelectorAll<HTMLTableRowElement>("tbody tr")];
  if (rows.length < 2 || rows.some((row) => !row.querySelector("form"))) return;
  document.querySelector<HTMLElement>("[data-order-hint]")?.removeAttribute("hidden");
  table.classList.add("movable");
  for (const row of rows) row.addEventListener("pointerdown", (down) => follow(row, rows, down));
}

function follow(row: HTMLTableRowElement, rows: readonly HTMLTableRowElement[], down: PointerEvent): void {
  // Fingers scroll the page; and whatever can be pressed in the row is pressed.
  if (down.pointerType === "touch" || down.button !== 0) return;
  if (down.target instanceof Element && down.target.closest("a, button, input")) return;
  const from = rows.indexOf(row) + 1;
  const others = rows.filter((other) => other !== row);
  let drawn = false;
  const at = (event: PointerEvent) =>
    placeAt(
      event.clientY,
      others.map((other) => {
        const box = other.getBoundingClientRect();
        return (box.top + box.bottom) / 2;
      }),
    );
  const end = new AbortController();
  const { signal } = end;
  const clear = () => {
    end.abort();
    for (const one of rows) one.classList.remove("drawn", "before", "after");
  };
  addEventListener(
    "pointermove",
    (event) => {
      drawn ||= Math.abs(event.clientY - down.clientY) > TRAVEL;
      if (!drawn) return;
      event.preventDefault();
      const to = at(event);
      row.classList.add("drawn");
      for (const [index, other] of others.entries()) {
        other.classList.toggle("before", index === to - 1);
        other.classList.toggle("after", index === to - 2 && to > others.length);
      }
    },
    { signal },
  );
  // A draw is no marking of text.
  addEventListener("selectstart", (event) => event.preventDefault(), { signal });
  addEventListener("pointercancel", clear, { signal });
  addEventListener("keydown", (event) => event.key === "Escape" && clear(), { signal });
  addEventListener(
    "pointerup",
    (event) => {
      const to = at(event);
      clear();
      if (drawn && to !== from) send(row, to);
    },
    { signal },
  );
}

function send(row: HTMLTableRowElement, to: number): void {
  const form = row.querySelector("form");
  if (!form) return;
  const field = document.createElement("input");
  [field.type, field.name, field.value] = ["hidden", "to", String(to)];
  form.append(field);
  form.requestSubmit();
}
