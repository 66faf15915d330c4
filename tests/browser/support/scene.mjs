// A house with people in it: one clinician at a desk and one client at a stage, each in a browser of their own.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { accessibilityViolations, addPasskeyDevice, launch, launchTab, openPage, openStill, openWindow, watchTroubles } from './chromium.mjs';
import { Desk } from './desk.mjs';
import { startHouse } from './harness.mjs';
import { PATIENCE } from './history.mjs';
import { openLink } from './link.mjs';
import { startRelay } from './relay.mjs';
import { closingList, enrol, fillComfort, newClient, newTarget, startSession } from './practice.mjs';
import { Stage } from './stage.mjs';

export const LOCATION = 'Fischerweg 9, Niederau';

/** An invented client; nobody has this name, number or address. */
export const CLIENT = {
  name: 'Wendel Ostermoor', addressed_as: 'Wendel', phone: '+49 30 23125 017', contact_name: 'Ilka Ostermoor', contact_phone: '+49 30 23125 018',
  usual_location: LOCATION, seizures: 'no', eye_condition: 'no',
};

/** An invented target. */
export const TARGET = {
  label: 'the ferry', prong: 'past', picture: 'the ramp lifting before I am across', negative_belief: 'I am stuck for good',
  positive_belief: 'I found my way off', voc: '2', emotions: 'dread, shame', sud: '8', body_location: 'throat and stomach',
};

/** How a meeting ends in which no target was worked on. */
export const CLOSING = {
  kind: 'no_reprocessing', resource: 'slow breathing', effect: 'settled', state: 'calm', companion: 'nobody', next_contact: 'Thursday',
  client_words: 'Until Thursday.',
};

/** What a page's console says of requests on a line that is cut. */
export const LOST_LINE = /ERR_|WebSocket/;

/**
 * Starts a house with one clinician who is signed in. Two browsers, so that the client's line can be slowed and cut alone.
 *
 * @param {{farDesk?: boolean, relay?: boolean | string}} [options] farDesk: the practice's side goes by a link of its own too, `scene.deskLink`; relay: the
 *   practice has one, at this address of the machine if it is one, and both browsers have a camera and a microphone of their own making
 */
export async function openScene({ farDesk = false, relay = false } = {}) {
  const scene = new Scene();
  scene.farDesk = farDesk;
  scene.wantsRelay = relay;
  await scene.open().catch(async (fault) => { await scene.close(); throw fault; });
  return scene;
}

/** See the head of this file. */
export class Scene {
  /** Everybody's pages, for `calm()`. */
  pages = [];
  /** What is no trouble, see `excuse`. */
  excused = [];

  async open() {
    if (this.wantsRelay) this.relay = await startRelay(this.wantsRelay === true ? undefined : this.wantsRelay);
    this.house = await startHouse({ env: this.relay?.env });
    this.link = await openLink(this.house.origin);
    if (this.farDesk) this.deskLink = await openLink(this.house.origin);
    this.near = await launch({ flags: [...(this.deskLink?.flags ?? []), ...this.devices] });
  }

  /** Camera and microphone that show a pattern and beep, allowed without a question. Ten pictures a second: each is made and read without a graphics card. */
  get devices() {
    return this.relay ? ['--use-fake-device-for-media-stream=fps=10', '--use-fake-ui-for-media-stream', '--allow-loopback-in-peer-connection'] : [];
  }

  /** A page of the practice's side, with a device that holds passkeys. */
  async memberPage(options) {
    const page = await openPage(this.near, this.house.origin, options);
    page.device = await addPasskeyDevice(page);
    this.pages.push(page);
    return page;
  }

  /** A page of the client's side, behind the link. */
  async clientPage(options) {
    this.far ??= await launch({ flags: [...this.link.flags, ...this.devices] });
    const page = await openPage(this.far, this.house.origin, { width: 1024, height: 700, ...options });
    this.pages.push(page);
    return page;
  }

  /** The same as a tab that can be hidden, see `launchTab`. */
  async clientTab() {
    this.far = await launchTab({ flags: this.link.flags });
    this.pages.push(watchTroubles(this.far.page, this.house.origin));
    return this.far;
  }

  /** Another window beside `page`, in the same browser and with the same sign-ins. */
  async windowBeside(page) {
    const opened = await openWindow(page, this.house.origin);
    this.pages.push(opened);
    return opened;
  }

  /** The closing list of the clinician whose desk is open, see `closingList`. */
  async closingList(desk, open) {
    const list = await closingList(desk, open);
    this.pages.push(list);
    return list;
  }

  /** The first member, invited from the terminal. @returns the member's page, signed in */
  async firstMember(name, roles, options) {
    const page = await this.memberPage(options);
    await enrol(page, await this.house.leeward('member', 'invite', '--name', name, '--role', roles));
    return page;
  }

  /** A clinician at the desk of a new session, with the client's link and code. `comfort`: fields of the client's comfort sheet. */
  async openDesk({ comfort, ...options } = {}) {
    const page = await this.clinicianPage(options);
    this.client = await newClient(page, CLIENT);
    this.target = await newTarget(page, TARGET);
    if (comfort) await fillComfort(page, this.client, comfort);
    this.session = await startSession(page, this.client, this.target);
    this.desk = new Desk(page);
    await this.desk.until('WAITING');
    return this.desk;
  }

  /** A page of the one clinician, signed in; the first of them makes the passkey. */
  async clinicianPage(options) {
    if (this.signedIn) {
      const page = await openPage(this.near, this.house.origin, { ...options, storageState: this.signedIn });
      this.pages.push(page);
      return page;
    }
    const page = await this.firstMember('Runa Halvard', 'clinician', options);
    this.signedIn = await page.context().storageState();
    return page;
  }

  /** The client joins, is admitted, seen and heard. @returns the stage */
  async joinAndAdmit(options) {
    await this.join(await this.clientPage(options));
    await this.stage.skipCheck();
    await this.admit();
    return this.stage;
  }

  /** The client joins on `page`, up to the questions of the check. */
  async join(page) {
    this.stage = new Stage(page);
    await this.stage.join(await this.desk.mint());
  }

  /** The client, who waits, is let in, seen and heard. */
  async admit() {
    await this.desk.admit({ location: LOCATION });
    await this.desk.sight();
  }

  /**
   * Makes a `test` whose every test has a desk of its own, of a new session of a new client, and leaves nothing behind: no page, no
   * line that is cut, no house that is down. Its pages had no trouble but that of lines that were cut, see `excuse`.
   *
   * @param {() => Scene} scene
   * @param prepare what is done before each test, with the scene whose desk is open
   */
  static tests(scene, prepare = () => {}) {
    return (name, act) => test(name, async (t) => {
      try {
        await scene().openDesk();
        await prepare(scene());
        await act(t);
        scene().calm();
      } finally {
        await scene().leave();
      }
    });
  }

  /** Lines of `page.troubles` that fit are no trouble from now on. */
  excuse(page, pattern) { this.excused.push({ page, pattern }); }

  /** Closes every page, and mends what was broken on purpose. */
  async leave() {
    this.link.restore();
    this.link.setDelay(0);
    for (const context of this.near.contexts()) await context.close();
    await this.far?.close();
    this.far = undefined;
    this.pages = [];
    this.excused = [];
    await this.house.mend();
  }

  /** Does what the last set left for the two to do, until the next one may start: the client's Ready, the clinician's sight, the first of two presses. */
  async settle() {
    const may = this.desk.page.locator('[data-part="start"]:not([aria-disabled])');
    const sight = this.desk.page.locator('[data-part="sight"]:not([aria-disabled])');
    const ready = this.stage.page.getByRole('button', { name: 'I am ready' });
    for (const since = Date.now(); !(await may.isVisible());) {
      assert.ok(Date.now() - since < PATIENCE, `nothing may start: ${await this.desk.word()}, ${await this.desk.messages()}; ${await this.stage.heading()}`);
      if (await ready.isVisible()) await this.stage.ready();
      else if (await sight.isVisible()) await this.desk.press('i');
      else if ((await this.desk.text('progress')).includes('asks twice')) await this.answerTwice();
      await this.desk.page.waitForTimeout(100);
    }
  }

  /** After "too much" a second Space counts only once the first has rested (`NO_DOUBLE_TAP`, 0.8 s): one sooner begins that rest anew. */
  async answerTwice() {
    await this.desk.press('Space');
    await this.desk.page.waitForTimeout(1000);
  }

  /** No page had any trouble. `lost`: its line was cut, so failed requests are no trouble of the page's. */
  calm({ lost = [] } = {}) {
    const lines = lost.map((page) => ({ page, pattern: LOST_LINE }));
    for (const page of this.pages) {
      const excused = [...this.excused, ...lines].filter((one) => one.page === page);
      assert.deepEqual(page.troubles.filter((line) => !excused.some(({ pattern }) => pattern.test(line))), [], page.url());
    }
  }

  async close() {
    await this.near?.close();
    await this.far?.close();
    await this.link?.close();
    await this.deskLink?.close();
    await this.house?.stop();
    await this.relay?.stop();
  }
}

/** Holds the page as it is now against axe. */
export async function accessible(page, what) {
  assert.deepEqual(await accessibilityViolations(page), [], `${what} at ${page.url()}`);
}

/** As `accessible`, of a still. */
export async function accessibleStill(still, what) {
  const page = await openStill(still);
  await accessible(page, what);
  await page.context().close();
}
