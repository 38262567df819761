// Site: what the building department says and what the house looks like, by touch, with no signal.
import assert from "node:assert/strict";
import { rm } from "node:fs/promises";
import { test } from "node:test";
import { Phone, SITE_DIR, assertFitsWidth, journey, kept, kill, ready, temporaryFolder, until } from "./harness.mjs";
import { Site } from "./server.mjs";
import { fillIn, plain } from "./walk.mjs";

/** Opens the page of Site. */
async function openSite(phone, page = phone.page) {
  await page.goto(phone.site.at("#/site"));
  await page.waitForURL(/\/site\//);
  await ready(page);
  return page;
}

const key = (page, name) => page.getByRole("button", { name, exact: true });
const answer = async (page) => plain(await page.locator(".answer").innerText());
const next = (page) => page.getByRole("button", { name: /^Next/ });

/** The permit card in hand: every first question is answered or passed over. */
async function firstQuestions(page) {
  const type = (text) => page.locator("#in-hand").fill(text);
  const choose = (hasText) => page.locator(".option", { hasText }).tap();
  const ask = [
    () => type("150"),
    () => undefined,
    () => choose("open water"),
    () => undefined, // the ground is level
    () => type("25"),
    () => choose("Atlantic"),
    () => type("0.3"),
    () => choose(/^1$/),
    () => type("40'"),
    () => type("28'"),
    () => type("10'"),
    () => type("6/12"),
  ];
  for (const [index, reply] of ask.entries()) {
    await page.getByText(`Question ${index + 1} of ${ask.length}`).waitFor();
    await page.locator(".site:not(.typing)").waitFor();
    await reply();
    await next(page).tap();
  }
  await page.locator(".topics").waitFor();
}

journey("a builder with the permit card gets through, and a header starts from it, with no signal", {}, async ({ site, phone }) => {
  const page = await openSite(phone);
  await kept(page);
  await site.stop();
  await page.reload();
  await ready(page);
  await firstQuestions(page);
  assert.match(await answer(page), /psf/);
  await page.getByText("stainless").first().waitFor();
  await key(page, "Uplift").tap();
  assert.match(await answer(page), /lb\s+lifts a rafter near the ends/);
  await assertFitsWidth(page);
  await page.getByRole("status").getByText("kept on this phone").waitFor();
  await page.getByRole("link", { name: "Members" }).tap();
  await page.waitForURL((url) => !/\/site\//.test(url.pathname));
  await ready(page);
  await page.locator("summary", { hasText: "Site loads" }).tap();
  const value = (label) => page.locator(".chip", { hasText: label }).locator(".chip-value").innerText();
  assert.match(plain(await value("Wind speed")), /150 mph/);
  assert.match(plain(await value("Mean roof height")), /13' 6"/, "the house on Site gives it");
});

journey("every number opens its working, and a value says who gave it", {}, async ({ phone }) => {
  const page = await openSite(phone);
  await key(page, "Show all").tap();
  await fillIn(page, "Wind speed", "150");
  await key(page, "building department").tap();
  await page.getByText("Given by building department").waitFor();
  await key(page, "Working").tap();
  await page.locator("dialog[open]").getByText("Eq. 26.10-1").first().waitFor();
  await page.goBack();
  await page.locator("dialog[open]").waitFor({ state: "detached" });
  await page.getByRole("button", { name: /^Working: Studs/ }).tap();
  const studs = page.locator("dialog[open] .working-part", { hasText: "Studs" });
  await until("the working shows the studs on top", async () => {
    const sheet = await page.locator("dialog[open] .slide-up-body").boundingBox();
    const part = await studs.boundingBox();
    return sheet && part && Math.abs(part.y - sheet.y) < 4;
  });
  await page.goBack();
  await page.locator("dialog[open]").waitFor({ state: "detached" });
  await key(page, "Undo").tap();
});

journey("a broken window, a wing and a live load by use", {}, async ({ phone }) => {
  const page = await openSite(phone);
  await key(page, "Show all").tap();
  await fillIn(page, "Wind speed", "150");
  const whole = await answer(page);
  await fillIn(page, "Hurricane coast", "Atlantic");
  await fillIn(page, "Glass protected", "no");
  await until("the wind pushes from inside", async () => (await answer(page)) !== whole);
  await page.getByText("counted as broken").waitFor();
  await page.getByRole("button", { name: /How much glass/ }).tap();
  await page.locator("#in-hand").fill("60");
  await page.getByText("in an eave wall").waitFor();
  for (const [label, size] of [["Wing length", "16'"], ["Wing width", "20'"], ["Its eave height", "9'"]]) await fillIn(page, label, size);
  await key(page, "Push").tap();
  await page.getByRole("heading", { name: "Wing: across the ridge, envelope procedure" }).waitFor();
  await key(page, "Weight").tap();
  await page.locator(".chip", { hasText: "Floor live load" }).first().tap();
  await page.locator(".given .plain", { hasText: "sleeping rooms" }).tap();
  await until("it is written", async () => (await page.locator("#in-hand").inputValue()) === "30 psf");
  await assertFitsWidth(page);
  await page.getByRole("status").getByText("kept on this phone").waitFor();
});

journey("what is outside is said, and the snow is answered all the same", {}, async ({ phone }) => {
  const page = await openSite(phone);
  await key(page, "Show all").tap();
  await fillIn(page, "A parapet", "yes");
  await until("the wind is not worked", async () => (await answer(page)).startsWith("Not worked"));
  await page.getByText("An engineer works the wind on it").first().waitFor();
  await key(page, "Snow").tap();
  await until("the snow is", async () => / psf/.test(await answer(page)));
});

journey("what cannot be is said beside its input, and the last answer stays, greyed", {}, async ({ phone }) => {
  const page = await openSite(phone);
  await key(page, "Show all").tap();
  const before = await answer(page);
  for (const [label, wrong, says] of [
    ["Wind speed", "fast", "not one number"],
    ["Wind speed", "70", "85 to 200"],
    ["House width", "400'", "is taken"],
    ["Pitch", "6/10", "on a run of 12"],
    ["Eave height", "-3", "is"],
  ]) {
    await fillIn(page, label, wrong);
    await until(`${wrong} is refused`, async () => (await page.locator(".hand").innerText()).includes(says));
    await page.getByText("not updated").waitFor();
    await page.locator("#in-hand").fill("");
    await until("the answer is back", async () => (await answer(page)) === before);
  }
});

journey("layers are tapped in and weighed", {}, async ({ phone }) => {
  const page = await openSite(phone);
  await key(page, "Show all").tap();
  await key(page, "Weight").tap();
  for (const layer of ["+ slate", "+ 1/2 panel", "+ 2x8 at 16"]) await page.locator(".given .plain", { hasText: layer }).tap();
  await until("the roof is weighed on the level", async () => (await answer(page)).startsWith("20.7 psf"));
  assert.equal(await page.locator("#in-hand").inputValue(), "slate + 1/2 panel + 2x8 at 16");
});

test("what was typed is there after the battery died", { timeout: 120_000 }, async () => {
  const profile = await temporaryFolder();
  const site = await new Site(SITE_DIR).start();
  const first = await Phone.start(site, { profile });
  let second;
  try {
    const page = await openSite(first);
    await key(page, "Show all").tap();
    await fillIn(page, "Wind speed", "155");
    await page.waitForTimeout(600); // the promise: kept half a second after the last key
    kill(profile);
    await first.context.close().catch(() => undefined);
    second = await Phone.start(site, { profile });
    const again = await openSite(second);
    await until("the speed is there", async () => (await again.locator(".chip", { hasText: "Wind speed" }).innerText()).includes("155"));
    assert.deepEqual(second.problems, []);
  } finally {
    await first.context.close().catch(() => undefined);
    await second?.close();
    await site.stop();
    await rm(profile, { recursive: true, force: true });
  }
});
