// Reading the record twice: as a page of records shows it, and as the rows in Postgres have it.

import { setTimeout } from 'node:timers/promises';
import { PATIENCE } from './history.mjs';

/** A table of the page as objects, its columns named by their headings; by the start of its caption. */
export async function table(page, caption) {
  const found = page.locator('table').filter({ has: page.locator('caption', { hasText: caption }) });
  return found.first().evaluate((element) => {
    // A heading over several columns comes before the names of those columns: "Ordered width".
    const under = [...(element.tHead.rows[1]?.cells ?? [])];
    const heads = [...element.tHead.rows[0].cells].flatMap((cell) => {
      const name = cell.textContent.trim();
      return cell.scope === 'colgroup' ? under.splice(0, cell.colSpan).map((own) => `${name} ${own.textContent.trim()}`) : [name];
    });
    return [...element.tBodies[0].rows].map((row) => Object.fromEntries([...row.cells].map((cell, i) => [heads[i], cell.textContent.trim()])));
  });
}

/** The words that the session's page has for each `wire::Ending`. */
export const ENDINGS = {
  done: 'as planned',
  ended_by_clinician: 'ended by the clinician',
  stopped_by_clinician: 'stopped by the clinician',
  stopped_by_client: 'stopped by the client',
  link_lost: 'stopped: link lost',
};

/** What is written behind: asks until the rows are as many and such as `fit`. @returns the rows, of the last time when they never were */
export async function written(ask, fit) {
  let rows = await ask();
  for (const since = Date.now(); !fit(rows) && Date.now() - since < PATIENCE;) {
    await setTimeout(50);
    rows = await ask();
  }
  return rows;
}

/** The sets of a session as the rows have them, in order. */
export function setRows(house, session) {
  return house.rows(`SELECT s.id, s.number, s.plan AS first, o.plan, x.ending AS room_ending, e.ending, e.cycles, e.width, r.sud, r.voc, n.change
    FROM stimulus_set s
    LEFT JOIN LATERAL (SELECT plan FROM set_order WHERE set_id = s.id ORDER BY seq DESC LIMIT 1) o ON true
    LEFT JOIN set_ending x ON x.set_id = s.id
    LEFT JOIN LATERAL (SELECT max(phase) AS cycles, max(width) AS width, max(ending) AS ending FROM set_evidence WHERE set_id = s.id) e ON true
    LEFT JOIN LATERAL (SELECT max(value) FILTER (WHERE scale = 'sud') AS sud, max(value) FILTER (WHERE scale = 'voc') AS voc
      FROM rating WHERE set_id = s.id) r ON true
    LEFT JOIN LATERAL (SELECT max(code) AS change FROM fact WHERE kind = 'mark' AND set_id = s.id) n ON true
    WHERE s.session_id = '${session}' ORDER BY s.number`);
}

/** The same rows in the words of the session's page. */
export function asShown(row) {
  const { first, plan } = row;
  const hertz = (rate) => rate.toFixed(2);
  return {
    Set: String(row.number),
    'Ordered cycles': String(plan.length.cycles),
    'Ordered rate, Hz': first.rate === plan.rate ? hertz(plan.rate) : `${hertz(first.rate)} to ${hertz(plan.rate)}`,
    'Ordered width': `${plan.width}°`,
    'Shown cycles': row.cycles.toFixed(1),
    'Shown width': `${row.width.toFixed(0)}°`,
    'Shown ending': ENDINGS[row.ending],
    'Rated SUD': row.sud === null ? '' : String(row.sud),
    'Rated VOC': row.voc === null ? '' : String(row.voc),
    'Rated change': row.change ?? '',
  };
}

/**
 * Every value of every table with `texts` in it, in clear, as bytes, base64 or hex; `[]` is what a test expects.
 * The whole database is read as one SQL dump's text would be: each table as text.
 */
export async function inClear(house, texts) {
  const tables = await house.rows(`SELECT quote_ident(schemaname) || '.' || quote_ident(tablename) AS name FROM pg_tables
    WHERE schemaname IN ('public', 'access')`);
  const found = [];
  for (const { name } of tables) {
    const content = JSON.stringify(await house.rows(`SELECT t::text AS row FROM ${name} t`)).toLowerCase();
    for (const text of texts) {
      const forms = [text, Buffer.from(text).toString('hex'), Buffer.from(text).toString('base64').replace(/=+$/, '').slice(0, -1)];
      if (forms.some((form) => content.includes(form.toLowerCase()))) found.push(`${name}: ${text}`);
    }
  }
  return found;
}

/** How a set was given, as the page says it of all sets that are alike in it. */
export const howGiven = ({ plan }) => `${plan.path}, ${[plan.channels.eyes && 'eyes', plan.channels.ears && 'tones'].filter(Boolean).join(' and ')}`;
