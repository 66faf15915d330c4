// A class without a style says nothing, and a style without a class is dead: of the pages of records, what is written in
// templates, scripts and the charts of the core is held against the style sheets.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";

const PORTAL = "../server/portal/src";

function texts(folder: string, ending: string): string[] {
  const files = readdirSync(folder, { recursive: true }) as string[];
  return files.filter((file) => file.endsWith(ending)).map((file) => readFileSync(join(folder, file), "utf8"));
}

/** Of pages of records: those of the live room and of a client have style sheets of their own. */
const isOfRecords = (file: string): boolean => !file.startsWith("live/") && !readFileSync(join(PORTAL, file), "utf8").includes('{% extends "live/');
const files = (readdirSync(PORTAL, { recursive: true }) as string[]).filter((file) => file.endsWith(".html") && isOfRecords(file));
/** It shows every part, so it keeps none alive. */
const SAMPLES = join("platform", "parts", "all.html");
const read = (names: string[]): string[] => names.map((file) => readFileSync(join(PORTAL, file), "utf8"));
const scripts = [...texts("src/records", ".ts"), ...texts("src/passkey", ".ts")].join("\n");
const charts = texts("../server/core/src/chart", ".rs").join("\n");

/** Names of classes in `class="..."`, with what is written between the marks of the template and without the marks. */
function classesOf(template: string): string[] {
  const values = [...template.matchAll(/class="((?:[^"{]|\{%.*?%\}|\{\{.*?\}\})*)"/g)].map((match) => match[1] ?? "");
  return values.flatMap((value) => value.replaceAll(/\{%.*?%\}|\{\{.*?\}\}/g, " ").split(/\s+/)).filter((name) => name !== "");
}

const sheets = ["styles/base.css", ...readdirSync("styles/records").map((file) => `styles/records/${file}`)]
  .map((file) => readFileSync(file, "utf8").replaceAll(/\/\*[\s\S]*?\*\//g, ""))
  .join("\n");
const styled = new Set([...sheets.replaceAll(/\{[^{}]*\}/g, "{}").matchAll(/\.([a-z][a-z-]*)/g)].map((match) => match[1]));
/** Classes by arguments of a part: `its_class = "tall"`, `charts::lane(course, "spark")`. */
function givenTo(page: string): string[] {
  return [...page.matchAll(/(?:its_[a-z_]*class = |charts::lane\([^,]*, )"([a-z ]+)"/g)].map((match) => match[1] ?? "");
}
const classes = (pages: string[]): Set<string> => new Set(pages.flatMap((page) => [...classesOf(page), ...givenTo(page)]));
const used = classes(read(files.filter((file) => file !== SAMPLES)));
const shown = classes(read(files));

test("every class of the style sheets of records is used by a page, a script or a chart", () => {
  assert.ok(styled.size > 40, `${styled.size} classes`);
  const inText = (name: string) => new RegExp(`["' ]${name}["' ]`).test(scripts) || new RegExp(`["' ]${name}["' ]`).test(charts);
  assert.deepEqual(
    [...styled].filter((name) => !used.has(name ?? "") && !inText(name ?? "")),
    [],
  );
});

test("every class on a page of records has a style", () => {
  assert.ok(shown.size > 30, `${shown.size} classes`);
  assert.deepEqual(
    [...shown].filter((name) => !styled.has(name)),
    [],
  );
});
