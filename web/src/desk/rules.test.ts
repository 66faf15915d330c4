import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

const sources = readdirSync("src/desk").filter((name) => name.endsWith(".ts") && !/\.(test|fixture)\.ts$/.test(name));
const templates = readdirSync("../server/portal/src/live").filter((name) => /^desk.*\.html$/.test(name));

test("nothing on the desk asks through the browser, and nothing writes HTML or browser storage", () => {
  const banned =
    /\b(alert|confirm|prompt|showModal)\s*\(|innerHTML|outerHTML|insertAdjacentHTML|document\.write|localStorage|sessionStorage|indexedDB|document\.cookie/;
  assert.ok(sources.length > 15);
  for (const name of sources) assert.doesNotMatch(readFileSync(`src/desk/${name}`, "utf8"), banned, name);
});

test("the templates carry no inline script, style or handler, and no address of another host", () => {
  assert.ok(templates.length >= 7);
  for (const name of templates) {
    const html = readFileSync(`../server/portal/src/live/${name}`, "utf8");
    assert.doesNotMatch(html, /<style|\sstyle=|\son[a-z]+=|javascript:|https?:\/\//, name);
    assert.doesNotMatch(html, /<script(?![^>]*\ssrc=)/, name);
  }
});

test("nothing blinks: the desk's style sheets hold no animation or transition", () => {
  for (const name of readdirSync("styles/desk")) assert.doesNotMatch(readFileSync(`styles/desk/${name}`, "utf8"), /animation|transition|@keyframes/, name);
});
