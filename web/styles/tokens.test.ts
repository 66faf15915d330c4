// Contrast by WCAG 2.2 (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance and #dfn-contrast-ratio).
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import type { Colours } from "../src/wire/Colours";

const TEXT = 4.5; // SC 1.4.3, level AA
const SHAPE = 3; // SC 1.4.11: boundaries of controls, and the dot on its field

type Tokens = Record<string, string>;

function tokensIn(css: string): Tokens {
  return Object.fromEntries([...css.matchAll(/--([a-z-]+):\s*(#[0-9A-F]{6});/g)].map((m) => [m[1]!, m[2]!]));
}

const sheet = readFileSync("styles/tokens.css", "utf8");
const [day = "", night = "", paper = ""] = sheet.split("@media");
const schemes = {
  day: tokensIn(day),
  night: { ...tokensIn(day), ...tokensIn(night) },
  print: { ...tokensIn(day), ...tokensIn(paper) },
};

/** Red, green and blue as light, 0 to 1. */
const linear = (hex: string): number[] =>
  [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16) / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = linear(hex);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

const pairs: [string, string, number][] = [
  ...["paper", "sheet", "wash"].flatMap((ground): [string, string, number][] => [
    ["ink", ground, TEXT],
    ["quiet", ground, TEXT],
    ["harbour", ground, TEXT],
    ["ember-line", ground, TEXT],
    ["edge", ground, SHAPE],
  ]),
  ["paper", "ink", TEXT],
  ["on-tide", "tide", TEXT],
  ["on-tide-quiet", "tide", TEXT],
  ["on-harbour", "harbour", TEXT],
  ["on-ember", "ember", TEXT],
  ...["dusk", "dawn"].flatMap((field): [string, string, number][] => [
    [`${field}-ink`, field, TEXT],
    [`${field}-ink`, `${field}-raised`, TEXT],
    [`${field}-quiet`, field, TEXT],
    [`${field}-edge`, field, SHAPE],
    [`${field}-edge`, `${field}-raised`, SHAPE],
  ]),
];

/** Every colour of dot and field that the wire can name, dark and lighter: `Record` makes sure that none is left out. */
const STIMULUS: Record<Colours, [dot: string, field: string, page: "dusk" | "dawn"][]> = {
  sand: [
    ["sand", "dusk", "dusk"],
    ["slate", "dawn", "dawn"],
  ],
  leaf: [
    ["leaf-pale", "leaf-dusk", "dusk"],
    ["leaf-deep", "leaf-dawn", "dawn"],
  ],
  lake: [
    ["lake-pale", "lake-dusk", "dusk"],
    ["lake-deep", "lake-dawn", "dawn"],
  ],
  stone: [
    ["stone-pale", "stone-dusk", "dusk"],
    ["stone-deep", "stone-dawn", "dawn"],
  ],
};
const stimulus = Object.values(STIMULUS).flat();
for (const [dot, field, page] of stimulus) {
  // The words of the page stand on the same field.
  pairs.push([dot, field, SHAPE], [`${page}-ink`, field, TEXT], [`${page}-quiet`, field, TEXT], [`${page}-edge`, field, SHAPE]);
}

test("the formula gives the figures of the standard: 21 to 1 for black on white, 1 to 1 for equals", () => {
  assert.equal(contrast("#000000", "#FFFFFF"), 21);
  assert.equal(contrast("#3A4247", "#3A4247"), 1);
  // #767676 on white is the well-known darkest grey that just passes 4.5:1 (from memory).
  assert.ok(contrast("#767676", "#FFFFFF") >= TEXT && contrast("#777777", "#FFFFFF") < TEXT);
});

for (const [scheme, tokens] of Object.entries(schemes)) {
  test(`every pair in use has enough contrast by ${scheme}`, () => {
    const poor = pairs
      .map(([front, ground, least]) => ({ front, ground, least, ratio: contrast(tokens[front]!, tokens[ground]!) }))
      .filter(({ ratio, least }) => !(ratio >= least))
      .map(({ front, ground, least, ratio }) => `${front} on ${ground}: ${ratio.toFixed(2)}, needs ${least}`);
    assert.deepEqual(poor, []);
  });
}

test("every scheme overrides only tokens that exist", () => {
  const known = new Set(Object.keys(tokensIn(day)));
  const strange = [night, paper].flatMap((part) => Object.keys(tokensIn(part))).filter((name) => !known.has(name));
  assert.deepEqual(strange, []);
});

// The browser's tests look at the layout of a light page alone: they may, as long as this holds.
test("a dark page lies as a light one: the dark scheme is colours alone, in one place", () => {
  const sheets = readdirSync("styles", { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".css"));
  const dark = sheets.filter((name) => readFileSync(`styles/${name}`, "utf8").includes("prefers-color-scheme"));
  assert.deepEqual(dark, ["tokens.css"]);
  const rest = night
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/--[a-z-]+: #[0-9A-F]{6};/g, "")
    .replace(/\s/g, "");
  assert.equal(rest, "(prefers-color-scheme:dark){:root{}}");
});

// WCAG 2.2 "general flash": a change of relative luminance of 10 % of the maximum or more where the
// darker is below 0.80. The dot crosses a point of its path twice a cycle, so its size and rate are
// limited by the server; here we only keep the step in luminance no larger than following it needs.
test("the dot's step in luminance stays under half of the full range", () => {
  const t = schemes.day;
  for (const [dot, field] of stimulus) assert.ok(Math.abs(luminance(t[dot]!) - luminance(t[field]!)) < 0.5, dot);
});

// WCAG 2.2 SC 2.3.1: a saturated red has R/(R+G+B) of 0.8 or more, with linear values.
const redness = (hex: string): number => {
  const [r = 0, g = 0, b = 0] = linear(hex);
  return r / (r + g + b);
};

test("the formula of saturated red: pure red is it, a paler one is not", () => {
  // Worked from the formula of sRGB: #FF0000 1.00, #FF3F3F 0.91, #FF8080 0.70.
  for (const [hex, ratio] of [
    ["#FF0000", 1],
    ["#FF3F3F", 0.91],
    ["#FF8080", 0.7],
  ] as const)
    assert.ok(Math.abs(redness(hex) - ratio) < 0.005, hex);
});

test("no dot and no field is a saturated red", () => {
  const t = schemes.day;
  for (const name of stimulus.flat()) assert.ok(redness(t[name]!) < 0.8, name);
});

test("the stage uses exactly these pairs", () => {
  const css = readFileSync("styles/stage/frame.css", "utf8");
  for (const [name, [dark, light]] of Object.entries(STIMULUS)) {
    if (name === "sand") continue; // what is used when nothing was chosen: the page's own
    assert.ok(css.includes(`:root[data-colours="${name}"] { --field: var(--${dark![1]}); --dot: var(--${dark![0]}); }`), name);
    assert.ok(css.includes(`:root[data-colours="${name}"].lighter { --field: var(--${light![1]}); --dot: var(--${light![0]}); }`), name);
  }
});
