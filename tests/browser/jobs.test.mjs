// Several jobs on one phone, and the example house that anyone can look at, by touch, with no signal.
import assert from "node:assert/strict";
import { keptOnThisPhone } from "./desk.mjs";
import { assertAccessible, assertFitsWidth, journey, kept, ready, until } from "./harness.mjs";
import { lookAt } from "./kinds.mjs";
import { answer, fillIn, key, plain } from "./walk.mjs";

const EXAMPLE = "Boatbuilder's house, Orlick Head (example)";
const EXAMPLE_ID = "example-boatbuilders-house";

/** Opens the page of Site. */
async function openSite(phone, page = phone.page) {
  await page.goto(phone.site.at("#/site"));
  await page.waitForURL(/\/site\//);
  await ready(page);
  return page;
}

const title = (page) => page.locator(".job-name").innerText();

/** The title says that this is the example, and all of it can be read. */
async function saysExample(page) {
  assert.equal(await title(page), EXAMPLE);
  const [text, box] = await page.locator(".job-name").evaluate((name) => [
    [name.scrollWidth, name.scrollHeight],
    [name.clientWidth, name.clientHeight],
  ]);
  assert.ok(text[0] <= box[0] && text[1] <= box[1], `at ${page.url()} the name takes ${text} and has ${box}`);
}

const card = (page, name) => page.locator(".job-card", { hasText: name });
const chipValue = async (page, label) =>
  plain(await page.locator(".chip").filter({ has: page.locator(`.chip-label:text-is("${label}")`) }).first().locator(".chip-value").innerText());

/** Taps what opens another job, and waits until the page is there with it. */
async function opens(page, target) {
  await Promise.all([page.waitForEvent("load"), target.tap()]);
  await ready(page);
}

/** Goes to another place as a thumb does. */
async function goTo(page, place) {
  await page.getByRole("link", { name: place }).tap();
  await page.waitForURL((url) => url.pathname.includes(`/${place.toLowerCase()}/`));
  await ready(page);
}

/** Everything that is stored, but for the example: by store and key. */
const storedBesideExample = (page) =>
  page.evaluate(
    (example) =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open("galeframe");
        request.onerror = reject;
        request.onsuccess = async () => {
          const database = request.result;
          const found = {};
          const wait = (asked) => new Promise((done) => (asked.onsuccess = () => done(asked.result)));
          for (const name of ["parts", "journal", "walk_log", "walk_drafts", "broken"]) {
            const store = database.transaction(name).objectStore(name);
            const [keys, values] = await Promise.all([wait(store.getAllKeys()), wait(store.getAll())]);
            keys.forEach((key, index) => {
              if (!String(values[index]).includes(example)) found[`${name} ${key}`] = values[index];
            });
          }
          database.close();
          resolve(found);
        };
      }),
    EXAMPLE_ID,
  );

journey("the example is looked at with no signal, and the job of one's own is as it was", {}, async ({ site, phone, page }) => {
  // What is typed for a header and not saved is of this job too.
  await phone.open("#/members");
  await page.locator("#in-hand").fill("9' 3-1/2");
  await keptOnThisPhone(page);
  await openSite(phone);
  await kept(page);
  await site.stop();
  await key(page, "Show all").tap();
  await fillIn(page, "Wind speed", "142");
  await keptOnThisPhone(page);
  const before = await storedBesideExample(page);
  assert.ok(Object.keys(before).length >= 3, "a head, values, and what is being typed");

  await opens(page, key(page, "Look at the example house"));
  await saysExample(page);
  assert.match(await chipValue(page, "Wind speed"), /150 mph/);
  assert.equal(await page.locator("#job-name").count(), 0, "the example keeps its name");
  await card(page, EXAMPLE).getByText("open now; an example, nothing of it is real").waitFor();
  await assertFitsWidth(page);
  await assertAccessible(page);

  await goTo(page, "Bracing");
  await saysExample(page);
  await lookAt(page, "Wall lines");
  assert.match(await answer(page), /^15,125 lb on the hardest line/);
  await lookAt(page, "Shear wall");
  assert.match(await answer(page), /not enough/);
  await fillIn(page, "Push along it", "5,000 lb");
  await until("the wall is worked anew", async () => /carries it/.test(await answer(page)));
  await goTo(page, "Inspection");
  await saysExample(page);
  for (const mark of ["W1", "W3", "W5"]) await page.getByText(mark, { exact: true }).first().waitFor();
  await page.getByRole("link", { name: "Members" }).tap();
  await page.waitForURL((url) => !/\/(inspection|site|bracing)\//.test(url.pathname));
  await ready(page);
  await saysExample(page);
  await assertFitsWidth(page);
  await page.locator("#in-hand").fill("7' 0");
  await keptOnThisPhone(page);

  await goTo(page, "Site");
  await opens(page, card(page, "Job 1"));
  assert.equal(await title(page), "Job 1");
  assert.match(await chipValue(page, "Wind speed"), /142 mph/);
  assert.deepEqual(await storedBesideExample(page), before, "nothing of it changed");
  await page.getByRole("link", { name: "Members" }).tap();
  await page.waitForURL((url) => !/\/site\//.test(url.pathname));
  await ready(page);
  assert.equal(await page.locator("#in-hand").inputValue(), "9' 3-1/2", "and what was being typed is there");
});

journey("the example opens as it was left, and is put back as it was", {}, async ({ phone, page }) => {
  await openSite(phone);
  await opens(page, key(page, "Look at the example house"));
  await fillIn(page, "Wind speed", "115");
  await keptOnThisPhone(page);
  await opens(page, card(page, "Job 1"));
  await key(page, "Show all").tap();
  await opens(page, key(page, "Look at the example house"));
  assert.match(await chipValue(page, "Wind speed"), /115 mph/);
  await opens(page, key(page, "Put it back as it was"));
  await saysExample(page);
  assert.match(await chipValue(page, "Wind speed"), /150 mph/);
});

journey("another job is begun, and a window that is loaded again stays with its own", {}, async ({ phone, page }) => {
  await openSite(phone);
  await key(page, "Show all").tap();
  await page.locator("#job-name").fill("Lot 4");
  // The name is kept first, though nothing but the key was tapped after it.
  await opens(page, key(page, "Begin another job"));
  assert.equal(await title(page), "Job 1", "the first number that is free");
  await page.getByText("Question 1 of").waitFor();
  await card(page, "Lot 4").waitFor();
  const other = await phone.openInNewTab("site/");
  assert.equal(await title(other), "Job 1", "a new window goes on with the job that was opened last");
  await opens(other, card(other, "Lot 4"));
  assert.equal(await title(other), "Lot 4");
  for (const [window, name] of [[page, "Job 1"], [other, "Lot 4"]]) {
    await window.bringToFront();
    await window.reload();
    await ready(window);
    assert.equal(await title(window), name);
    await goTo(window, "Bracing");
    assert.equal(await title(window), name, "on every page");
    await goTo(window, "Site");
  }
  await opens(other, key(other, "Begin another job"));
  assert.equal(await title(other), "Job 2");
  await page.bringToFront();
  await card(page, "Job 2").waitFor();
});

journey("a phone that keeps nothing opens no other job, and says why", {}, async ({ phone, page }) => {
  await openSite(phone);
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await key(page, "Begin another job").tap();
  await page.locator(".notice", { hasText: "the phone is full" }).waitFor();
  await key(page, "OK").tap();
  await key(page, "Show all").tap();
  await fillIn(page, "Wind speed", "133");
  await page.getByRole("alert").getByText("the phone is full").waitFor();
  await key(page, "Look at the example house").tap();
  await page.locator(".notice", { hasText: "the phone is full" }).waitFor();
  assert.equal(await title(page), "Job 1");
  assert.match(await chipValue(page, "Wind speed"), /133 mph/, "what was typed is on the screen");
});

journey("with no room to keep anything the jobs are not listed, and that is said", {}, async ({ phone, page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("no", "SecurityError");
    };
  });
  await openSite(phone);
  await page.locator(".jobs").getByRole("alert").getByText("this browser keeps nothing here").waitFor();
  assert.equal(await page.locator(".job-card").count(), 0);
});
