// Real Chromium for the tests: launching, a virtual passkey, accessibility.

import assert from 'node:assert/strict';
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { createServer } from 'node:net';
import { chromium } from 'playwright-core';
import { keepHistory } from './history.mjs';

const AXE = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const FLAGS = [
  '--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run',
  '--disable-background-networking', '--disable-component-update', '--disable-sync',
  // The pages under test must not be slowed for being in the background: both parties' windows are "in front".
  '--disable-background-timer-throttling', '--disable-backgrounding-occluded-windows', '--disable-renderer-backgrounding',
];

/** Launches Chromium, or `executable`, which runs it, with a profile of its own; `env`: what it has in its environment besides. `close()` it. */
export function launch({ flags = [], executable = process.env.LEEWARD_CHROMIUM ?? '/usr/bin/chromium', env = {} } = {}) {
  return chromium.launch({
    executablePath: executable,
    env: { ...process.env, ...env },
    args: [...FLAGS, ...flags],
  });
}

/**
 * Launches a Chromium whose pages are tabs of one window, so that a page can be hidden by another: elsewhere the driver
 * tells every page that it is in front. `close()` it.
 *
 * @returns {Promise<{page: Page, hide(): Promise<void>, show(): Promise<void>, close(): Promise<void>}>}
 */
export async function launchTab({ flags = [], width = 1024, height = 700 } = {}) {
  const port = await freePort();
  const browser = await launch({ flags: [...flags, `--remote-debugging-port=${port}`, `--window-size=${width},${height + 150}`] });
  const tabs = await chromium.connectOverCDP(`http://127.0.0.1:${port}`, { noDefaults: true });
  const [context] = tabs.contexts();
  const page = await keepHistory(await context.newPage());
  const other = await context.newPage();
  await page.bringToFront();
  return {
    page,
    hide: () => other.bringToFront(),
    show: () => page.bringToFront(),
    close: async () => {
      await tabs.close();
      await browser.close();
    },
  };
}

async function freePort() {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address();
  server.close();
  await once(server, 'close');
  return port;
}

/**
 * A page in a browser context of its own, as on a computer of its own.
 *
 * `page.history` keeps what it says, see history.mjs. `page.troubles` collects uncaught errors, console errors and requests
 * to another host than `origin`'s; a test ends with `assert.deepEqual(page.troubles, [])`.
 */
export async function openPage(browser, origin, { width = 1280, height = 800, ...options } = {}) {
  const context = await browser.newContext({ baseURL: origin, viewport: { width, height }, ...options });
  return keepHistory(watchTroubles(await context.newPage(), origin));
}

/** A further window of the same browser, with the same sign-ins: unlike a tab, it leaves no other page in the background. */
export async function openWindow(page, origin) {
  const context = page.context();
  const cdp = await context.newCDPSession(page);
  const { targetInfo: { browserContextId } } = await cdp.send('Target.getTargetInfo');
  const [opened] = await Promise.all([
    context.waitForEvent('page'), cdp.send('Target.createTarget', { url: 'about:blank', browserContextId, newWindow: true }),
  ]);
  await cdp.detach();
  return keepHistory(watchTroubles(opened, origin));
}

/** Fills `page.troubles`, see `openPage`. */
export function watchTroubles(page, origin) {
  page.troubles = [];
  page.on('pageerror', (error) => page.troubles.push(`error: ${error.message}`));
  page.on('console', (message) => { if (message.type() === 'error') page.troubles.push(`console: ${message.text()}`); });
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.origin !== origin) page.troubles.push(`foreign request: ${request.url()}`);
  });
  return page;
}

/**
 * Gives the page an authenticator that holds passkeys and verifies its user at once (CDP WebAuthn domain).
 * Passkeys need a page at http://localhost or https: an RP id is a domain, never an address.
 *
 * @param transport 'internal', as in a laptop, or 'usb', a security key
 * @returns `{credentials(), setUserVerified(boolean), setPresence(boolean), remove()}`; presence: whether its user touches it
 */
export async function addPasskeyDevice(page, transport = 'internal') {
  const cdp = page.webauthn ??= await page.context().newCDPSession(page);
  await cdp.send('WebAuthn.enable');
  const { authenticatorId } = await cdp.send('WebAuthn.addVirtualAuthenticator', {
    options: {
      protocol: 'ctap2',
      transport,
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
    },
  });
  return {
    credentials: async () => (await cdp.send('WebAuthn.getCredentials', { authenticatorId })).credentials,
    setUserVerified: (isUserVerified) => cdp.send('WebAuthn.setUserVerified', { authenticatorId, isUserVerified }),
    setPresence: (enabled) => cdp.send('WebAuthn.setAutomaticPresenceSimulation', { authenticatorId, enabled }),
    remove: () => cdp.send('WebAuthn.removeVirtualAuthenticator', { authenticatorId }),
  };
}

/**
 * Accessibility: every violation that axe finds, as short lines; `[]` is what a test expects.
 * The source goes in by evaluation, since the pages' policy lets no script be added.
 */
export async function accessibilityViolations(page) {
  if (!await page.evaluate(() => 'axe' in globalThis)) await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { violations } = await globalThis.axe.run({ resultTypes: ['violations'] });
    return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes.map((node) => node.target.join(' ')).join(', ')}`);
  });
}

/** Style sheets by their addresses, which name what they hold. */
const sheets = new Map();

/**
 * What stands on a page at this moment, to be looked at when there is time, see `openStill`: a page that is looked at from all sides answers
 * nobody for a second and more where the machine is slow, and then the room rightly holds, or ends its set.
 */
export async function stillOf(page) {
  const { html, links } = await page.evaluate(withoutPrograms);
  for (const link of links.filter((one) => !sheets.has(one))) {
    const sheet = await page.request.get(link);
    assert.ok(sheet.ok(), `${link}: ${sheet.status()}`);
    sheets.set(link, await sheet.text());
  }
  return { browser: page.context().browser(), address: page.url(), viewport: page.viewportSize(), html };
}

/**
 * Opens a still in its own size; nothing runs on it, and no portal is needed. `page`, where a still was opened before, is used again, which costs less
 * than a new one. Close its context.
 */
export async function openStill({ browser, address, viewport, html }, page) {
  if (page === undefined) return openAt(address, await (await browser.newContext({ viewport })).newPage(), html);
  await page.setViewportSize(viewport);
  await page.setContent(html);
  return page;
}

async function openAt(address, page, html) {
  await page.route('**/*', (route, request) => {
    if (request.url() === address) return route.fulfill({ contentType: 'text/html; charset=utf-8', body: html });
    const sheet = sheets.get(request.url());
    return sheet === undefined ? route.abort() : route.fulfill({ contentType: 'text/css; charset=utf-8', body: sheet });
  });
  await page.goto(address);
  return page;
}

/** Runs in the page. What was typed and chosen is kept. */
function withoutPrograms() {
  const copy = document.documentElement.cloneNode(true);
  const fields = (of) => [...of.querySelectorAll('input, textarea')];
  const copies = fields(copy);
  for (const [index, { localName, value, checked }] of fields(document).entries()) {
    if (localName === 'textarea') copies[index].textContent = value;
    else copies[index].setAttribute('value', value);
    copies[index].toggleAttribute('checked', checked === true);
  }
  for (const program of copy.querySelectorAll('script')) program.remove();
  return { html: `<!doctype html>${copy.outerHTML}`, links: [...document.querySelectorAll('link[rel="stylesheet"]')].map(({ href }) => href) };
}
