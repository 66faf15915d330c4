// Draws one panel of the course so far: step line, values where they change, marks in a lane of their own, and the figures in a table.
import type { Entry } from "../wire/Entry";
import type { SessionLog } from "../wire/SessionLog";
import {
  baseOf,
  caption,
  course,
  ENDS,
  findingOf,
  footed,
  heightOf,
  labelled,
  lastRated,
  leftOf,
  middleOf,
  SIZE,
  stepLine,
  wholeHeight,
  type Point,
  type Scale,
} from "./course";
import { make, makeSvg, shown } from "./dom";

const drawn = new WeakMap<Element, string>();

function axis(scale: Scale): SVGElement[] {
  const [least, most] = ENDS[scale];
  const to = SIZE.width - SIZE.right;
  const lines = [least, most].flatMap((value) => {
    const y = heightOf(value, scale);
    return [
      makeSvg("path", { d: `M${SIZE.left} ${y}H${to}`, class: value === least ? "axis" : "grid" }),
      makeSvg("text", { x: SIZE.left - 8, y: y + 4, "text-anchor": "end", class: "tick" }, String(value)),
    ];
  });
  return [...lines, makeSvg("text", { x: 0, y: 11, class: "name" }, scale.toUpperCase())];
}

function values(points: Point[], scale: Scale): SVGElement[] {
  const named = labelled(points);
  const last = lastRated(points);
  return points.flatMap((point, index) => {
    if (point.value === null) return [];
    const [x, y] = [middleOf(points, index), heightOf(point.value, scale)];
    const dot = makeSvg("circle", { cx: x, cy: y, r: point.place === "start" ? 3.6 : 3, class: point.place === "start" ? "ring" : "disc" });
    if (index === last) return [dot, makeSvg("text", { x: leftOf(points, index + 1) + 6, y: y + 4, class: "name" }, `${scale.toUpperCase()} ${point.value}`)];
    return named.includes(index) ? [dot, makeSvg("text", { x, y: y - 8, "text-anchor": "middle" }, String(point.value))] : [dot];
  });
}

const foot = (points: Point[], scale: Scale): SVGElement[] =>
  footed(points).map((index) =>
    makeSvg("text", { x: middleOf(points, index), y: baseOf(scale) + 15, "text-anchor": "middle", class: "tick" }, String(points[index]?.place)),
  );

/** One mark alone says in words what it is; of several the caption says it. */
function lane(points: Point[], scale: Scale): SVGElement[] {
  const y = baseOf(scale) + SIZE.foot + 9;
  const marked = points.flatMap((point, index) => (point.mark === "" ? [] : [{ point, x: middleOf(points, index) }]));
  const signs = marked.map(({ point, x }) =>
    point.mark === "×"
      ? makeSvg("path", { d: `M${x - 4} ${y - 4}l8 8m0-8l-8 8`, class: "halt" })
      : makeSvg("text", { x, y: y + 4, "text-anchor": "middle", class: "tick" }, point.mark),
  );
  const [only] = marked;
  if (marked.length !== 1 || only === undefined) return signs;
  const before = only.x > SIZE.width / 2;
  const words = `set ${only.point.place}: ${only.point.ending}`;
  return [...signs, makeSvg("text", { x: only.x + (before ? -9 : 9), y: y + 4, "text-anchor": before ? "end" : "start", class: "tick" }, words)];
}

function table(points: Point[], scale: Scale): HTMLElement {
  const details = make("details", "");
  const body = make("table", "");
  const head = make("tr", "");
  head.append(make("th", "set", { scope: "col" }), make("th", scale.toUpperCase(), { scope: "col" }), make("th", "ended", { scope: "col" }));
  body.append(
    head,
    ...points.map((point) => {
      const line = make("tr", "");
      line.append(make("td", String(point.place)), make("td", point.value === null ? "not asked" : String(point.value)), make("td", point.ending));
      return line;
    }),
  );
  details.append(make("summary", "figures"), body);
  return details;
}

/** Redraws the figure when the course changed; a scale that was not asked about has no drawing, and VOC then no words either. */
export function renderCourse(figure: HTMLElement, log: SessionLog, standing: Entry[], scale: Scale): void {
  const points = course(log, standing, scale);
  const key = JSON.stringify([points, log.other_reevaluated]);
  if (drawn.get(figure) === key) return;
  drawn.set(figure, key);
  const asked = points.some((point) => point.value !== null);
  shown(figure, asked || scale === "sud");
  const says = caption(points, scale);
  const words = make("figcaption", "");
  const heading = findingOf(points, scale);
  const other = !asked && log.other_reevaluated ? " What was rated is of the target before." : "";
  words.append(make("strong", heading), make("span", says.slice(heading.length) + other));
  if (!asked) return figure.replaceChildren(words);
  const svg = makeSvg("svg", { viewBox: `0 0 ${SIZE.width} ${wholeHeight(points, scale)}`, role: "img", "aria-label": says, class: "chart" });
  svg.append(
    ...axis(scale),
    makeSvg("path", { d: stepLine(points, scale), class: "step" }),
    ...values(points, scale),
    ...foot(points, scale),
    ...lane(points, scale),
  );
  figure.replaceChildren(words, svg, table(points, scale));
}
