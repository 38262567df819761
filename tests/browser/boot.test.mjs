// The app opens, stays open with no signal, and asks nothing of anyone else.
import assert from "node:assert/strict";
import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { test } from "node:test";
import { Phone, SITE_DIR, assertAccessible, assertFitsWidth, journey, kept, ready, temporaryFolder } from "./harness.mjs";
import { Site } from "./server.mjs";

// The page may ask for this: a place that the first visit did not load.
const DEEP = "members/header";

for (const size of ["small", "large"]) {
  for (const colorScheme of ["light", "dark"]) {
    journey(`opens on a ${size} phone, ${colorScheme}`, { size, context: { colorScheme } }, async ({ phone, page }) => {
      await phone.open();
      assert.equal(await page.locator("#app-shell").count(), 0, "the opening picture is gone");
      assert.ok((await page.locator("body").innerText()).trim().length > 0, "there is something to read");
      await assertFitsWidth(page);
      await assertAccessible(page);
    });
  }
}

journey("opens with no signal after one visit", {}, async ({ site, phone, page }) => {
  await phone.open();
  await kept(page);
  await site.stop();
  await page.reload();
  await ready(page);
  await phone.open(DEEP);
  await phone.openInNewTab();
  await phone.openInNewTab(`${DEEP}?from=note`);
});

test("opens with no signal after the browser was closed", { timeout: 120_000 }, async () => {
  const profile = await temporaryFolder();
  const site = await new Site(SITE_DIR).start();
  const first = await Phone.start(site, { profile });
  await first.open();
  await kept(first.page);
  await first.close();
  await site.stop();
  const second = await Phone.start(site, { profile });
  try {
    await second.open(DEEP);
    assert.deepEqual([...first.problems, ...second.problems], []);
  } finally {
    await second.close();
    await rm(profile, { recursive: true, force: true });
  }
});

let letModuleThrough;
const moduleHeld = new Promise((resolve) => (letModuleThrough = resolve));
const hold = (path) => (path.endsWith(".wasm") ? moduleHeld : undefined);
journey("shows the opening picture before the app is there, and nothing jumps", { hold }, async ({ site, page }) => {
  await page.addInitScript(() => {
    globalThis.shift = 0;
    const add = (list) => list.getEntries().forEach((entry) => (globalThis.shift += entry.value));
    new PerformanceObserver(add).observe({ type: "layout-shift", buffered: true });
  });
  await page.goto(site.at(), { waitUntil: "commit" });
  await page.locator("#app-shell h1").waitFor();
  await assertFitsWidth(page);
  letModuleThrough();
  await ready(page);
  await page.waitForTimeout(300);
  assert.equal(await page.evaluate(() => globalThis.shift), 0, "layout shift");
});

journey(
  "works below the root of a site, with no signal too",
  { folder: process.env.SUB_PATH_SITE_DIR, base: process.env.SUB_PATH },
  async ({ site, phone, page }) => {
    await phone.open(DEEP);
    await kept(page);
    await site.stop();
    await page.reload();
    await ready(page);
    await phone.openInNewTab();
  },
);

test("the icons that the manifest names are there, in the sizes it says", async () => {
  const manifest = JSON.parse(await readFile(join(SITE_DIR, "manifest.webmanifest"), "utf8"));
  assert.ok(manifest.icons.some((icon) => icon.purpose === "maskable"));
  for (const { src, sizes, type } of manifest.icons) {
    const bytes = await readFile(join(SITE_DIR, src));
    if (type !== "image/png") continue;
    // A PNG's width and height stand at bytes 16 and 20.
    assert.equal(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`, sizes, src);
  }
});
