// Draws one panel of the course so far: step line, marks and the figures in a table.
import type { Entry } from "../wire/Entry";
import type { SessionLog } from "../wire/SessionLog";
import { caption, course, ENDS, heightOf, middleOf, SIZE, stepLine, type Point, type Scale } from "./course";
import { make, makeSvg } from "./dom";

const drawn = new WeakMap<Element, string>();

function axis(scale: Scale): SVGElement[] {
  return ENDS[scale].flatMap((value) => {
    const y = heightOf(value, scale);
    return [
      makeSvg("path", { d: `M${SIZE.left} ${y}H${SIZE.width - SIZE.right}`, class: "axis" }),
      makeSvg("text", { x: SIZE.left - 5, y: y + 4, "text-anchor": "end" }, String(value)),
    ];
  });
}

function marks(points: Point[], scale: Scale): SVGElement[] {
  const foot = SIZE.height - 6;
  return points.flatMap((point, index) => {
    const x = middleOf(points, index);
    const label = `${point.place} ${point.mark}`.trim();
    const every = Math.ceil(points.length / 12);
    const foots = index % every === 0 || point.mark !== "" ? [makeSvg("text", { x, y: foot, "text-anchor": "middle" }, label)] : [];
    if (point.value === null) return foots;
    return [...foots, makeSvg("circle", { cx: x, cy: heightOf(point.value, scale), r: 3 })];
  });
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
      line.append(
        make("td", String(point.place)),
        make("td", point.value === null ? "not asked" : String(point.value)),
        make("td", { "×": "stopped", "?": "not known", "": "" }[point.mark]),
      );
      return line;
    }),
  );
  details.append(make("summary", "figures"), body);
  return details;
}

/** Redraws the figure when the course changed. */
export function renderCourse(figure: Element, log: SessionLog, standing: Entry[], scale: Scale): void {
  const points = course(log, standing, scale);
  const key = JSON.stringify(points);
  if (drawn.get(figure) === key) return;
  drawn.set(figure, key);
  const says = caption(points, scale);
  const svg = makeSvg("svg", { viewBox: `0 0 ${SIZE.width} ${SIZE.height}`, role: "img", "aria-label": says });
  svg.append(...axis(scale), makeSvg("path", { d: stepLine(points, scale), class: "line" }), ...marks(points, scale));
  figure.replaceChildren(make("figcaption", says), svg, table(points, scale));
}
