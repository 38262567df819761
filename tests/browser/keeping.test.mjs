// What is typed and saved is kept: through a dead server, a killed browser, a second window, a full phone.
import assert from "node:assert/strict";
import { rm } from "node:fs/promises";
import { test } from "node:test";
import { chip, figure, keptOnThisPhone, keeping, line, next, openSaved, putAwayNotice, save, type, verdict } from "./desk.mjs";
import { Phone, SITE_DIR, journey, kept, kill, ready, temporaryFolder, until } from "./harness.mjs";
import { Site } from "./server.mjs";

journey("a saved answer is there with the server dead", {}, async ({ site, phone, page }) => {
  await phone.open();
  await kept(page);
  await type(page, "9' 3-1/2");
  const answer = `${await figure(page)} ${await verdict(page)}`;
  await save(page);
  await site.stop();
  await page.reload();
  await ready(page);
  assert.equal(`${await figure(page)} ${await verdict(page)}`, answer, "the desk is as it was left");
  const list = await openSaved(page);
  await list.getByText("Header 1").waitFor();
  await list.getByRole("button", { name: "New check" }).tap();
  assert.notEqual(await line(page).inputValue(), "9' 3-1/2");
  const again = await openSaved(page);
  await again.locator(".open", { hasText: "Header 1" }).tap();
  await until("the saved check is open", async () => (await line(page).inputValue()) === "9' 3-1/2");
  assert.equal(`${await figure(page)} ${await verdict(page)}`, answer);
});

test("typing is there after the browser was killed", { timeout: 120_000 }, async () => {
  const profile = await temporaryFolder();
  const site = await new Site(SITE_DIR).start();
  const first = await Phone.start(site, { profile });
  await first.open();
  await save(first.page, "Kitchen");
  await putAwayNotice(first.page);
  await line(first.page).tap();
  await first.page.keyboard.type("10' 7");
  await first.page.waitForTimeout(500); // the promise: kept half a second after the last key
  kill(profile);
  await first.context.close().catch(() => undefined);
  const second = await Phone.start(site, { profile });
  try {
    const page = await second.open();
    assert.equal(await line(page).inputValue(), "10' 7");
    const list = await openSaved(page);
    await list.getByText("Kitchen").waitFor();
    assert.deepEqual(second.problems, []);
  } finally {
    await second.close();
    await site.stop();
    await rm(profile, { recursive: true, force: true });
  }
});

journey("kept is said only when it is", {}, async ({ phone, page }) => {
  await phone.open();
  await keptOnThisPhone(page);
  await line(page).tap();
  await page.keyboard.type("7");
  assert.equal(await keeping(page), "keeping\u2026");
  await keptOnThisPhone(page);
});

journey("a phone that keeps nothing says so, and still answers", {}, async ({ phone, page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("no", "SecurityError");
    };
  });
  await phone.open();
  await page.getByRole("alert").getByText("this browser keeps nothing here").waitFor();
  assert.equal(await keeping(page), "not kept");
  await type(page, "8'");
  assert.match(await figure(page), /\d/);
  await page.getByRole("button", { name: "Save", exact: true }).tap();
  await page.getByRole("button", { name: /^Save \S/ }).tap();
  await page.locator("dialog[open]").getByRole("alert").waitFor();
});

journey("a full phone says so and tries again", {}, async ({ phone, page }) => {
  await phone.open();
  await keptOnThisPhone(page);
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    globalThis.freeRoom = () => (IDBObjectStore.prototype.put = put);
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await type(page, "8' 4");
  await page.getByRole("alert").getByText("the phone is full").waitFor();
  assert.equal(await line(page).inputValue(), "8' 4", "nothing is lost from the screen");
  await page.evaluate(() => globalThis.freeRoom());
  await type(page, "8' 5");
  await keptOnThisPhone(page);
  await page.reload();
  await ready(page);
  assert.equal(await line(page).inputValue(), "8' 5");
});

journey("two windows: both changes of one check are kept", {}, async ({ phone, page }) => {
  await phone.open();
  await type(page, "6' 6");
  await save(page, "Door");
  await putAwayNotice(page);
  const other = await phone.openInNewTab();
  for (const [window, width] of [[page, "7' 0"], [other, "8' 0"]]) {
    const list = await openSaved(window);
    await list.locator(".open", { hasText: "Door" }).tap();
    await window.locator("dialog[open]").waitFor({ state: "detached" });
    await type(window, width);
  }
  // The second window is kept from hearing of the first one's change.
  await other.evaluate(() => {
    const get = IDBObjectStore.prototype.getAll;
    IDBObjectStore.prototype.getAll = function (...rest) {
      if (this.name === "parts") throw new DOMException("busy", "UnknownError");
      return get.apply(this, rest);
    };
  });
  const change = async (window) => {
    await window.bringToFront();
    await window.getByRole("button", { name: "Save", exact: true }).tap();
    await window.getByRole("button", { name: "Change Door instead" }).tap();
    await window.locator("dialog[open]").waitFor({ state: "detached" });
  };
  await change(page);
  await change(other);
  await other.locator(".notice", { hasText: "Both are kept" }).waitFor();
  await page.bringToFront();
  const list = await openSaved(page);
  await until("both are in the list", async () => (await list.locator(".open").count()) === 2);
});

journey("a part that cannot be read is set aside and told", {}, async ({ phone, page }) => {
  await phone.open();
  await save(page, "Good one");
  await page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open("galeframe");
        request.onerror = reject;
        request.onsuccess = () => {
          const store = request.result.transaction("parts", "readwrite").objectStore("parts");
          store.put("{ torn", "job/x/header/y");
          store.put('{"format":99}', "job/x/header/z");
          store.transaction.oncomplete = () => resolve(request.result.close());
        };
      }),
  );
  await page.reload();
  await ready(page);
  await page.locator(".notice", { hasText: "newer version" }).waitFor();
  await putAwayNotice(page);
  await page.locator(".notice", { hasText: "set aside" }).waitFor();
  await putAwayNotice(page);
  const list = await openSaved(page);
  await list.getByText("Good one").waitFor();
  const aside = await page.evaluate(
    () =>
      new Promise((resolve) => {
        const request = indexedDB.open("galeframe");
        request.onsuccess = () => {
          const all = request.result.transaction("broken").objectStore("broken").getAll();
          all.onsuccess = () => resolve(all.result);
        };
      }),
  );
  assert.deepEqual(aside, ["{ torn"], "its bytes are kept as they were");
});

journey("the job's own values are said once", {}, async ({ phone, page }) => {
  await phone.open();
  await page.locator("summary", { hasText: "Site loads" }).tap();
  await chip(page, "Ground snow").tap();
  await type(page, "55");
  await next(page).tap();
  const list = await openSaved(page);
  await list.getByRole("button", { name: "New check" }).tap();
  await page.locator("dialog[open]").waitFor({ state: "detached" });
  const value = () => chip(page, "Ground snow").locator(".chip-value .figure-set").innerText();
  assert.equal(await value(), "55 psf");
  await page.getByRole("link", { name: "Site" }).tap();
  await page.waitForURL(/\/site\//);
  await ready(page);
  assert.equal(await value(), "55 psf");
  await keptOnThisPhone(page);
  await page.reload();
  await ready(page);
  assert.equal(await value(), "55 psf", "and the app opens where one was");
});
