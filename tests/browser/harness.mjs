// A phone with Galeframe on it. Every journey fails on a console error, an uncaught error, a blocked piece of content
// and on any request to another site.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { chromium } from "playwright-core";
import { Site } from "./server.mjs";

export const SITE_DIR = required("SITE_DIR");

export const PHONES = {
  small: { width: 360, height: 740 },
  large: { width: 390, height: 844 },
};

const BROWSER_ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

// Generous: a slow machine must not fail a journey that is right.
const PATIENCE = 20_000;
const LONGEST_JOURNEY = 120_000;

function required(name) {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set; run these with: cargo xtask test --only browser`);
  return value;
}

/** A folder that is gone when the process ends a journey. */
export async function temporaryFolder() {
  return mkdtemp(join(tmpdir(), "galeframe-"));
}

export class Phone {
  problems = [];

  /** `profile` is a folder that keeps what the browser stores; pass the same one to start the browser again. */
  static async start(site, { size = "small", profile, ...contextOptions } = {}) {
    const phone = new Phone();
    phone.site = site;
    phone.ownProfile = profile === undefined;
    phone.profile = profile ?? (await temporaryFolder());
    phone.context = await chromium.launchPersistentContext(phone.profile, {
      executablePath: required("CHROMIUM"),
      args: BROWSER_ARGUMENTS,
      viewport: PHONES[size],
      deviceScaleFactor: 2,
      isMobile: true,
      hasTouch: true,
      locale: "en-US",
      ...contextOptions,
    });
    phone.context.setDefaultTimeout(PATIENCE);
    phone.context.on("request", (request) => phone.#watchRequest(request));
    phone.context.on("page", (page) => phone.#watchPage(page));
    phone.context.pages().forEach((page) => phone.#watchPage(page));
    return phone;
  }

  /** The tab that the browser starts with. */
  get page() {
    return this.context.pages()[0];
  }

  /** Opens a place of the app and waits for its answer. */
  async open(place = "", page = this.page) {
    await page.goto(this.site.at(place));
    await ready(page);
    return page;
  }

  async openInNewTab(place = "") {
    return this.open(place, await this.context.newPage());
  }

  async close() {
    await this.context.close();
    if (this.ownProfile) await rm(this.profile, { recursive: true, force: true });
  }

  #watchPage(page) {
    page.on("console", (message) => {
      if (message.type() === "error") this.problems.push(`console: ${message.text()} (${page.url()})`);
    });
    page.on("pageerror", (error) => this.problems.push(`uncaught: ${error.message} (${page.url()})`));
  }

  #watchRequest(request) {
    const url = new URL(request.url());
    const isLocal = ["about:", "blob:", "data:"].includes(url.protocol);
    if (!isLocal && url.origin !== this.site.origin) this.problems.push(`request to another site: ${url.href}`);
  }
}

/** Loads the core alone (tests/in_browser) into a page of its own; `use` runs there and finds it as `core`. */
export async function withCoreModule(phone, use, argument) {
  const site = await new Site(required("CORE_MODULE_DIR")).start();
  const page = await phone.context.newPage();
  try {
    phone.site = site;
    await page.goto(site.at());
    await page.evaluate(async () => {
      globalThis.core = await import("/in_browser.js");
      await globalThis.core.default();
    });
    return await page.evaluate(use, argument);
  } finally {
    await page.close();
    await site.stop();
  }
}

/** Ends a browser as an empty battery does. */
export function kill(profile) {
  const { stdout } = spawnSync("ps", ["-eo", "pid=,args="], { encoding: "utf8", maxBuffer: 2 ** 26 });
  const lines = stdout.split("\n").filter((entry) => entry.includes(`--user-data-dir=${profile}`));
  assert.ok(lines.length > 0, "the browser runs");
  for (const entry of lines) {
    try {
      process.kill(Number.parseInt(entry, 10), "SIGKILL");
    } catch (error) {
      if (error.code !== "ESRCH") throw error;
    }
  }
}

/** Waits until the app shows its answer: it then sets `data-ready="true"` on the root element. */
export async function ready(page) {
  try {
    await page.waitForFunction(() => document.documentElement.dataset.ready === "true");
  } catch (error) {
    const body = await page.evaluate(() => document.body.innerText).catch(() => "(no page)");
    throw new Error(`the app did not get ready at ${page.url()}; the page says: ${body}`, { cause: error });
  }
}

/** Waits until the worker keeps the whole app on this phone. */
export async function kept(page) {
  const state = await page.evaluate(
    (patience) =>
      Promise.race([
        navigator.serviceWorker.ready.then((registration) => registration.active?.state ?? "none"),
        new Promise((resolve) => setTimeout(resolve, patience, "not registered")),
      ]),
    PATIENCE,
  );
  assert.ok(["activating", "activated"].includes(state), `the app is not kept on this phone: worker ${state}`);
  // What the browser fetches by itself, such as the icon, has come too: a server that stops under it is no fault of the app.
  await page.waitForLoadState("networkidle", { timeout: 3_000 }).catch(() => undefined);
}

/** Waits until `check` gives something true, and gives it back. */
export async function until(what, check, patience = PATIENCE) {
  const end = Date.now() + patience;
  for (;;) {
    const found = await check();
    if (found) return found;
    assert.ok(Date.now() < end, `waited in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

const AXE = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** Fails with every accessibility rule that the page breaks. */
export async function assertAccessible(page) {
  // The page's own content policy keeps foreign scripts out, so axe comes in through the debugger instead.
  const { readFile } = await import("node:fs/promises");
  await page.evaluate(await readFile(AXE, "utf8"));
  const { violations } = await page.evaluate(() => globalThis.axe.run({ resultTypes: ["violations"] }));
  const found = violations.flatMap(({ id, help, nodes }) => nodes.map(({ target }) => `${id} at ${target}: ${help}`));
  assert.deepEqual(found, [], `accessibility at ${page.url()}`);
}

/** Nothing may stick out sideways: a page that slides under the thumb cannot be used in gloves. */
export async function assertFitsWidth(page) {
  const [content, screen] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  assert.ok(content <= screen, `the page is ${content} px wide on a screen of ${screen} px`);
}

/** A test with a site, a phone, and the check that nothing went wrong unseen. */
export function journey(name, options, walk) {
  const { folder = SITE_DIR, base, hold, size, context = {} } = options;
  test(name, { timeout: LONGEST_JOURNEY }, async () => {
    const site = await new Site(folder, { base, hold }).start();
    const phone = await Phone.start(site, { size, ...context });
    try {
      await walk({ site, phone, page: phone.page });
      assert.deepEqual(phone.problems, []);
    } finally {
      await phone.close();
      await site.stop().catch(() => undefined);
    }
  });
}
