// Every id that a client's script says stands in the catalogue, and every id there is said somewhere.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";

const catalogue = ["client", "call", "forms"].map((name) => readFileSync(`../server/portal/src/words/${name}.rs`, "utf8")).join("\n");
const ids = new Set([...catalogue.matchAll(/\(\s*"([a-z_]+)",\s*"/g)].map((match) => match[1]!));

const scripts = ["src/stage", "src/stage_call", "src/join", "src/errand", "src/forms"].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
    .map((name) => readFileSync(`${folder}/${name}`, "utf8")),
);
const pages = ["live/client", "live/join", "live/stage", "live/left", "platform/error_client", "askings/open", "askings/fill", "askings/said"];
const templates = pages.map((name) => readFileSync(`../server/portal/src/${name}.html`, "utf8"));
// What the portal says itself on a page of the client.
const handlers = [readFileSync("../server/portal/src/askings/fill.rs", "utf8")];

test("no page says what the catalogue does not have", () => {
  const asked = templates.flatMap((text) => [...text.matchAll(/words::get\("([a-z_]+)"\)/g)].map((match) => match[1]!));
  const said = [...scripts, ...handlers].flatMap((text) =>
    [...text.matchAll(/(?:say|button|speech|tell)\(([^)]*)\)/g)].flatMap((call) => [...call[1]!.matchAll(/"([a-z]+_[a-z_]+)"/g)].map((id) => id[1]!)),
  );
  assert.ok(asked.length > 8 && said.length > 40, `${asked.length} and ${said.length}`);
  assert.deepEqual(
    [...asked, ...said].filter((id) => !ids.has(id)),
    [],
  );
});

test("nothing in the catalogue is left unsaid", () => {
  const text = [...scripts, ...templates, ...handlers].join("\n");
  // Built ids: `${page.name}_heading`, `check_distance_${far}`, `forms_${standing}`, `call_voice_${device}`.
  const built =
    /^(connecting|refused)_(heading|text)$|^check_distance_(near|arm|far)$|^forms_(kept|keeping|unkept|elsewhere|over)$|^call_(picture|voice)_(refused|absent|taken|stopped|unable)$|^call_during_(shown|dimmed|hidden)$/;
  assert.deepEqual(
    [...ids].filter((id) => !text.includes(`"${id}"`) && !built.test(id)),
    [],
  );
});
