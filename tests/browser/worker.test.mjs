// A new version comes whole or not at all, and only when it is asked for. public/sw.template.js holds the contract.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { rmSync } from "node:fs";
import { cp, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { SITE_DIR, journey, kept, ready, temporaryFolder, until } from "./harness.mjs";

const folder = await temporaryFolder();
await cp(SITE_DIR, folder, { recursive: true });
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));

const integrityOf = (bytes) => `sha256-${createHash("sha256").update(bytes).digest("base64")}`;

/** Marks the page as another edition and writes a worker that keeps it. Gives the marked page without putting it up. */
async function prepareEdition(edition) {
  const page = await readFile(join(SITE_DIR, "index.html"), "utf8");
  const marked = page.replace("<title>", `<meta name=edition content=${edition}><title>`);
  const worker = await readFile(join(SITE_DIR, "sw.js"), "utf8");
  const listed = worker
    .replace(/const VERSION = "[^"]*"/, `const VERSION = "edition-${edition}"`)
    .replace(/\["\.\/","[^"]*"\]/, JSON.stringify(["./", integrityOf(marked)]));
  assert.notEqual(listed, worker);
  await writeFile(join(folder, "sw.js"), listed);
  return marked;
}

const putUpPage = (page) => writeFile(join(folder, "index.html"), page);
const editionOf = (page) => page.evaluate(() => document.querySelector("meta[name=edition]")?.content ?? "first");
/** Looks for a new version and gives what became of it: "installed", "redundant" (it gave up) or "none". */
const lookForUpdate = (page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration.update();
    const worker = registration.installing ?? registration.waiting;
    while (worker?.state === "installing") {
      await new Promise((resolve) => worker.addEventListener("statechange", resolve, { once: true }));
    }
    return worker?.state ?? "none";
  });
const cacheNames = (page) => page.evaluate(() => caches.keys());

journey("a version that is only half there is not taken", { folder }, async ({ phone, page }) => {
  await phone.open();
  await kept(page);
  const before = await cacheNames(page);
  await prepareEdition(2); // the new worker is up, the page it keeps is not
  assert.equal(await lookForUpdate(page), "redundant");
  await page.reload();
  await ready(page);
  assert.equal(await editionOf(page), "first");
  assert.deepEqual(await cacheNames(page), before);
  // The browser itself reports the digest that does not fit; that is what this journey is about.
  phone.problems = phone.problems.filter((problem) => !problem.includes("integrity"));
});

journey("a new version waits until it is asked for, then is there whole", { folder }, async ({ site, phone, page }) => {
  await cp(SITE_DIR, folder, { recursive: true });
  await phone.open();
  await kept(page);
  await putUpPage(await prepareEdition(3));
  assert.equal(await lookForUpdate(page), "installed");
  await page.reload();
  await ready(page);
  assert.equal(await editionOf(page), "first", "a reload does not switch");
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    const changed = new Promise((resolve) => {
      navigator.serviceWorker.addEventListener("controllerchange", resolve, { once: true });
    });
    registration.waiting.postMessage("take-over");
    await changed;
  }).catch(() => undefined); // the app may reload itself before this comes back
  await until("one version is left", async () => (await cacheNames(page).catch(() => [])).length === 1);
  await site.stop();
  const tab = await phone.openInNewTab();
  assert.equal(await editionOf(tab), "3");
});
