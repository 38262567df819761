// The walk of a site supervisor with a tape, a phone and no signal.
import assert from "node:assert/strict";
import { readFile, rm } from "node:fs/promises";
import { test } from "node:test";
import { Phone, SITE_DIR, journey, kept, kill, ready, temporaryFolder, until } from "./harness.mjs";
import { Site } from "./server.mjs";
import { answer, back, fillIn, key, log, look, newMark, openWalk, plain, startWalk } from "./walk.mjs";

/** A picture as a phone's camera gives it. */
const photo = { name: "wall.png", mimeType: "image/png" };

async function takePhoto(page, caption) {
  const buffer = await page.screenshot();
  await page.locator('input[type="file"][accept^="image"]').setInputFiles({ ...photo, buffer });
  await page.locator(".new-photo").waitFor();
  await page.locator(".new-photo .option", { hasText: "Close view" }).tap();
  await page.locator(".new-photo .option", { hasText: "tape or rule" }).tap();
  await page.getByLabel("Caption").fill(caption);
  await key(page, "Keep photo").tap();
  await page.locator(".new-photo").waitFor({ state: "detached" });
}

/** A row with one bay at 17 in: seven studs on their marks, and one an inch off. */
async function logRow(page) {
  await look(page, "Stud spacing");
  for (let stud = 0; stud < 3; stud += 1) await page.locator(".offer").tap();
  await page.locator("#in-hand").fill("65");
  await page.locator("#in-hand").press("Enter");
  await until("the wide bay is judged", async () => (await answer(page)) === '17" too far apart');
  await page.getByRole("button", { name: /^Next/ }).tap();
  for (let stud = 0; stud < 4; stud += 1) await page.locator(".offer").tap();
  await fillIn(page, "Where on the mark", "north end");
  await log(page);
}

async function logNails(page) {
  await look(page, "Nails");
  await fillIn(page, "Line counted", "panel edge");
  await fillIn(page, "Length counted", "8'");
  await fillIn(page, "Nails driven", "17");
  await fillIn(page, "Missed the stud", "1");
  await fillIn(page, 'Over 1/16" deep', "5");
  await fillIn(page, "Where on the mark", "second sheet");
  await log(page);
}

async function logHoldDown(page) {
  await look(page, "Bolts, hold-downs, ties");
  await fillIn(page, "Looking at", "a hold-down");
  await fillIn(page, "Nut", "loose");
  await fillIn(page, "Where on the mark", "south end");
  await log(page);
}

test("a walk with the server stopped, the browser killed, closed out and printed", { timeout: 240_000 }, async () => {
  const profile = await temporaryFolder();
  const site = await new Site(SITE_DIR).start();
  const first = await Phone.start(site, { profile });
  let second;
  try {
    await walkUntilTheEnd(first, site, profile);
    await first.context.close().catch(() => undefined);
    second = await Phone.start(site, { profile });
    await comeBack(second);
  } finally {
    await first.context.close().catch(() => undefined);
    await second?.close();
    await rm(profile, { recursive: true, force: true });
  }
});

/** Until the battery is empty. */
async function walkUntilTheEnd(phone, site, profile) {
  const page = await openWalk(phone);
  await kept(page);
  await site.stop();
  await startWalk(page, "W1", { Drawing: "S2.1", Revision: "B", "Stud spacing": "16", Nail: "8d common", "Edge spacing": "6", "Field spacing": "12" });
  await logRow(page);
  await takePhoto(page, "Bay between 48 and 65");
  await back(page);
  await logNails(page);
  await back(page);
  await logHoldDown(page);
  await back(page);

  // The supervisor read the tape wrongly: the stud stands at 64-1/2.
  await page.locator(".look-row", { hasText: "Stud spacing" }).tap();
  await key(page, "Correct").tap();
  await page.locator(".look .hand").waitFor();
  await page.locator(".reading").nth(3).tap();
  await page.locator("#in-hand").fill("64 1/2");
  await page.locator("#in-hand").press("Enter");
  await until("the corrected bay is judged", async () => (await answer(page)).startsWith('16-1/2"'));
  await page.waitForTimeout(600); // the promise: kept half a second after the last key
  kill(profile);
}

async function comeBack(phone) {
  const page = await openWalk(phone);
  await page.getByText("W1", { exact: true }).first().tap();
  await page.locator(".look-row", { hasText: "Stud spacing" }).tap();
  await key(page, "Correct").tap();
  await page.locator(".look .hand").waitFor();
  assert.match(await answer(page), /^16-1\/2"/, "what was typed before the browser died is there");
  await log(page);
  const history = plain(await page.locator(".history").innerText());
  assert.match(history, /First look.*17"/s, "the first look is kept");
  assert.match(history, /Corrected.*16-1\/2"/s);
  await back(page);
  await mendNut(page);
  await back(page);
  await closeOut(page);
  assert.deepEqual(phone.problems, []);
}

/** What was found loose is agreed on, done, and looked at again; the first look stays. */
async function mendNut(page) {
  await page.locator(".look-row", { hasText: "south end" }).tap();
  for (const [words, step] of [["Tighten it; the foreman says yes", "It is agreed"], ["The crew", "It is done"]]) {
    await page.locator("#follow-words").fill(words);
    await key(page, step).tap();
    await page.locator(".history", { hasText: words }).waitFor();
  }
  await key(page, "Check again").tap();
  await page.locator(".look .hand").waitFor();
  await fillIn(page, "Nut", "tight");
  await fillIn(page, "Rod and nut", "flush or proud");
  await fillIn(page, "Rod off the post", "no");
  await log(page);
  assert.match(await answer(page), /within/);
  const history = await page.locator(".history").innerText();
  assert.match(history, /First look.*out.*Looked at again after mending.*within/s);
  await back(page);
}

const HEAD = {
  Project: "Lot 4 house",
  "Address or lot": "Lot 4",
  "Permit number": "none",
  Ended: "11:30",
  "Weather and temperature": "dry, 58 F",
  "Who looked": "A. Framer",
  Title: "site supervisor",
  "Compared with": "S2.1 rev B, approved",
  "Code and edition": "IRC 2021",
  "Sections used": "R602.3",
  "What was covered": "walls",
  "Not visible or not reached": "all was seen",
};

async function closeOut(page) {
  await key(page, "Record").tap();
  await key(page, "The head").tap();
  for (const [label, text] of Object.entries(HEAD)) await fillIn(page, label, text);
  await key(page, "Keep the head").tap();
  await page.locator("summary", { hasText: "Sign" }).tap();
  await page.locator("#signer").fill("A. Framer");
  await page.locator(".sign .option", { hasText: "and no more" }).tap();
  await page.locator(".sign .ink-field").scrollIntoViewIfNeeded();
  const field = await page.locator(".sign .ink-field").boundingBox();
  await page.mouse.move(field.x + 30, field.y + 80);
  await page.mouse.down();
  for (const step of [40, 90, 140, 190]) await page.mouse.move(field.x + 30 + step, field.y + 80 + (step % 60));
  await page.mouse.up();
  await key(page, "Sign the record").tap();
  await page.locator(".record .signature").first().waitFor();
  await page.emulateMedia({ media: "print" });
  const printed = await page.locator(".record").innerText();
  for (const words of ["Lot 4 house", "W1", '17"', '16-1/2"', "north end", "Bay between 48 and 65", "S2.1", "A. Framer", "loose"]) {
    assert.ok(plain(printed).includes(words), `${words} is printed`);
  }
  await page.emulateMedia({ media: null });
  const paper = await page.pdf({ format: "Letter" });
  assert.ok(paper.length > 20_000, "the record prints, with its photo");
}

journey("twenty bays are logged in under a minute of taps", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1", { "Stud spacing": "16" });
  const began = Date.now();
  await look(page, "Stud spacing");
  let taps = 1;
  for (let stud = 0; stud < 20; stud += 1, taps += 1) await page.locator(".offer").tap();
  await log(page);
  taps += 1;
  assert.ok(taps <= 24, `${taps} taps`);
  assert.ok(Date.now() - began < 60_000);
  await back(page);
  assert.match(await page.locator(".look-row").textContent(), /Stud spacing/);
});

journey("a row is tapped along its drawing", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1", { "Stud spacing": "16" });
  await look(page, "Stud spacing");
  await page.locator(".offer").tap();
  for (const next of ['32"', '48"', '64"']) {
    await page.locator("rect.pick", { hasText: `Next pull, ${next} if it stands on its mark` }).tap();
  }
  const readings = await page.locator(".reading-strip .chip-value .figure-set").allInnerTexts();
  assert.deepEqual(readings, ['16"', '32"', '48"', '64"']);
  assert.equal(await answer(page), '16" within');
});

journey("a bowed stud and a pack that lacks one are tapped, not typed", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1", { "Stud spacing": "16", "Packs of studs": "48: 2" });
  await look(page, "Stud spacing");
  for (let stud = 0; stud < 3; stud += 1) await page.locator(".offer").tap();
  const said = page.locator(".ready-keys .key");
  await page.locator(".reading").nth(1).tap();
  await said.filter({ hasText: "bowed" }).tap();
  await said.filter({ hasText: '3' }).first().tap();
  await until("the bow is judged", async () => plain(await page.locator(".look").innerText()).includes('bowed 3/8'));
  // The pack that the drawing asks for stands there already, and nobody has looked at it yet.
  const pack = page.locator(".reading", { hasText: "not seen of 2" });
  await pack.tap();
  await said.filter({ hasText: "1 of 2" }).tap();
  await until("the pack is judged", async () => /out|too/.test(await answer(page)));
  const studs = page.getByRole("img", { name: /Pack at .*: 1 of 2 studs\..*Stud at .*: bowed 3\/8/ });
  await studs.first().waitFor();
  await log(page);
});

journey("a nailing sample takes a few taps and twenty seconds", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1", { Nail: "8d common", "Edge spacing": "6" });
  const began = Date.now();
  let taps = 0;
  const tap = async (target) => {
    await target.tap();
    taps += 1;
  };
  const next = page.getByRole("button", { name: /^Next/ });
  await tap(page.locator(".kind-card", { hasText: "Nails" }));
  await tap(page.locator(".hand .option", { hasText: "panel edge" }));
  // The way on leads to what is asked first; what is not at hand is passed over.
  const counted = { "Length counted": "8'", "Nails driven": "17", "Missed the stud": "1" };
  for (let left = Object.keys(counted).length; left > 0; ) {
    await tap(next);
    const text = counted[await page.locator("#in-hand-label").innerText()];
    if (!text) continue;
    await tap(page.locator("#in-hand"));
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
    await page.locator(".typing").waitFor({ state: "detached" });
    left -= 1;
  }
  assert.equal(await answer(page), '6-7/16" too few hold');
  await tap(key(page, "Log it"));
  await page.locator(".point-page").waitFor();
  assert.ok(taps <= 16, `${taps} taps`);
  assert.ok(Date.now() - began < 20_000);
});

journey("a pull that cannot be is asked about where it happened and kept as typed", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "garage left", { "Stud spacing": "16" });
  await look(page, "Stud spacing");
  for (const pull of ["16", "32", "23", "64"]) {
    await page.locator("#in-hand").fill(pull);
    await page.locator("#in-hand").press("Enter");
    await page.getByRole("button", { name: /^Next/ }).tap();
  }
  await page.locator(".reading-asked").first().waitFor();
  const readings = await page.locator(".reading-strip .chip-value .figure-set").allInnerTexts();
  assert.deepEqual(readings, ['16"', '32"', '23"', '64"'], "nothing that was typed is changed");
  assert.ok(await key(page, "Log it").isDisabled(), "nothing is judged while the pulls contradict each other");
  await page.locator(".reading").nth(2).tap();
  await page.locator("#in-hand").fill("48");
  await page.locator("#in-hand").press("Enter");
  await until("the row is judged", async () => (await answer(page)) === '16" within');
  await page.locator("#in-hand").fill("nonsense");
  await page.locator(".echo .problem").waitFor();
  await until("the last good answer is marked", () => page.getByText("not updated").isVisible());
  assert.ok(await key(page, "Log it").isDisabled());
});

journey("a look that was left goes on, or starts over", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1", { "Stud spacing": "16" });
  await look(page, "Stud spacing");
  for (let stud = 0; stud < 3; stud += 1) await page.locator(".offer").tap();
  await back(page);
  await look(page, "Stud spacing");
  assert.equal(await page.locator(".reading").count(), 3);
  await key(page, "Start over").tap();
  await until("nothing is typed", async () => (await page.locator(".reading").count()) === 0);
  await key(page, "Undo").tap();
  await until("what was typed is back", async () => (await page.locator(".reading").count()) === 3);
});

journey("what was assumed of a logged look is said in a correction", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1");
  await look(page, "Stud spacing");
  for (let stud = 0; stud < 3; stud += 1) await page.locator(".offer").tap();
  await log(page);
  await page.locator(".assumption", { hasText: "Required spacing" }).tap();
  await page.locator(".look .hand").waitFor();
  assert.equal(await page.locator(".reading").count(), 3, "with what was measured");
});

journey("what could not be seen is an answer of its own", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1");
  await look(page, "Nails");
  await key(page, "Not seen").tap();
  await page.locator(".point-page").waitFor();
  await back(page);
  assert.match(await page.locator(".look-row").textContent(), /could not be seen/);
});

journey("a job file goes to another phone and meets what is there", { size: "large" }, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1", { "Stud spacing": "16" });
  await logRow(page);
  await takePhoto(page, "Close");
  await back(page);
  await back(page);
  await key(page, "Record").tap();
  const [download] = await Promise.all([page.waitForEvent("download"), key(page, "Job file").tap()]);
  const bytes = await readFile(await download.path());
  assert.equal(bytes.subarray(0, 2).toString(), "PK");

  const other = await Phone.start(phone.site);
  try {
    const there = await openWalk(other);
    const bringIn = async (name, buffer) => {
      await there.getByRole("button", { name: /^Walks/ }).tap();
      await there.locator('input[type="file"][accept^=".zip"]').setInputFiles({ name, mimeType: "application/zip", buffer });
    };
    await bringIn("torn.zip", bytes.subarray(0, bytes.length / 2));
    await there.locator(".notice").first().waitFor();
    await key(there, "OK").tap();
    await bringIn("job.zip", bytes);
    await there.locator(".notice", { hasText: "another job" }).waitFor();
    await Promise.all([there.waitForEvent("load"), key(there, "Open it").tap()]);
    await ready(there);
    await there.locator(".row-card", { hasText: "Walk 1" }).tap();
    await there.getByText("W1", { exact: true }).first().tap();
    await there.locator(".look-row", { hasText: "too far apart" }).waitFor();
    await bringIn("job.zip", bytes);
    await there.locator(".notice", { hasText: "0 entries and 0 photos" }).waitFor();
    await key(there, "OK").tap();
    const chosen = there.waitForEvent("filechooser");
    await key(there, "Bring it in as a copy").tap();
    await (await chosen).setFiles({ name: "job.zip", mimeType: "application/zip", buffer: bytes });
    await there.locator(".notice", { hasText: "a job of its own" }).waitFor();
    await Promise.all([there.waitForEvent("load"), key(there, "Open it").tap()]);
    await ready(there);
    await there.getByText("(copy)").first().waitFor();
    await there.locator(".row-card", { hasText: "Walk 1" }).tap();
    await there.getByText("W1", { exact: true }).first().waitFor();
    assert.deepEqual(other.problems, []);
  } finally {
    await other.close();
  }
});

journey("a full phone loses nothing of a look", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1");
  await look(page, "Stud spacing");
  for (let stud = 0; stud < 3; stud += 1) await page.locator(".offer").tap();
  await page.waitForTimeout(500);
  await page.evaluate(() => {
    const add = IDBObjectStore.prototype.add;
    globalThis.freeRoom = () => (IDBObjectStore.prototype.add = add);
    IDBObjectStore.prototype.add = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await key(page, "Log it").tap();
  await page.getByRole("alert").getByText("the phone is full").waitFor();
  assert.equal(await page.locator(".reading").count(), 3, "the readings are on the screen");
  await page.evaluate(() => globalThis.freeRoom());
  await key(page, "OK").tap();
  await log(page);
});

journey("a photo that the phone cannot read is said in a sentence", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1");
  const file = { name: "x.jpg", mimeType: "image/jpeg", buffer: Buffer.from("no picture") };
  await page.locator('input[type="file"][accept^="image"]').setInputFiles(file);
  await page.locator(".notice", { hasText: "cannot read that file" }).waitFor();
});

journey("two windows of one walk see each other's marks", {}, async ({ phone }) => {
  const page = await openWalk(phone);
  await startWalk(page, "W1");
  const other = await openWalk(phone, await phone.context.newPage());
  await other.getByText("W1", { exact: true }).first().waitFor();
  await key(other, "New mark").tap();
  await newMark(other, "W2");
  await page.bringToFront();
  await back(page);
  await page.getByText("W2", { exact: true }).first().waitFor();
});
