// Members beside the header: by touch, with no signal.
import assert from "node:assert/strict";
import { rm } from "node:fs/promises";
import { test } from "node:test";
import { Phone, SITE_DIR, assertFitsWidth, journey, kept, kill, ready, temporaryFolder, until } from "./harness.mjs";
import { MEMBERS, lookAt } from "./kinds.mjs";
import { Site } from "./server.mjs";
import { answer, fillIn, plain } from "./walk.mjs";

const key = (page, name) => page.getByRole("button", { name, exact: true });

/** Opens the page from the header's, as a thumb does. */
async function openMember(phone, page = phone.page) {
  await page.goto(phone.site.at("#/members"));
  await ready(page);
  await page.getByRole("link", { name: "Joists, rafters, studs, posts" }).tap();
  await page.waitForURL(/\/member\//);
  await ready(page);
  return page;
}

journey("a joist from a clear span to a size, with no signal, and it is there after a restart of the page", {}, async ({ site, phone }) => {
  const page = await openMember(phone);
  await kept(page);
  await site.stop();
  await page.reload();
  await ready(page);
  await page.locator("#in-hand").fill("15'");
  await until("2x10 carries it", async () => /^2x10 carries it/.test(await answer(page)));
  await fillIn(page, "Spacing", "24");
  await until("it needs more", async () => /^2x14 carries it/.test(await answer(page)));
  await page.getByRole("heading", { name: "By the code: span table" }).waitFor();
  await page.getByText("Each joist carries its own strip.").first().waitFor();
  await key(page, "Working").tap();
  await page.locator("dialog[open]").getByText("NDS 2018").first().waitFor();
  await page.goBack();
  await page.locator("dialog[open]").waitFor({ state: "detached" });
  await page.getByRole("status").getByText("kept on this phone").waitFor();
  await page.reload();
  await ready(page);
  const chip = page.locator(".chip", { hasText: "Spacing" }).first();
  assert.match(plain(await chip.innerText()), /24"/);
  await assertFitsWidth(page);
});

journey("every kind opens by touch, answers, and fits the width, with no signal", {}, async ({ site, phone }) => {
  const page = await openMember(phone);
  await kept(page);
  await site.stop();
  for (const kind of MEMBERS.slice(1)) {
    await lookAt(page, kind);
    const said = await answer(page);
    assert.ok(said.length > 5, `${kind}: ${said}`);
    assert.equal(await page.locator("section.group:not(:has(.chip))").count(), 0, `${kind}: a heading without inputs`);
    const picture = page.locator(".picture svg").first();
    assert.ok((await picture.locator("*").count()) > 5, `${kind} is drawn`);
    await assertFitsWidth(page);
  }
  await page.locator("details.kinds summary").tap();
  await page.getByRole("link", { name: "Header", exact: true }).tap();
  await page.waitForURL((url) => !/\/member\//.test(url.pathname));
  await ready(page);
});

journey("a hole that the plumber drilled is not allowed, and says who decides", {}, async ({ phone }) => {
  const page = await openMember(phone);
  await lookAt(page, "Notch, hole");
  await page.locator("#in-hand").fill("2-3/4");
  await fillIn(page, "Cut", "a hole");
  await fillIn(page, "Where", "7'");
  await fillIn(page, "Hole to the edge", "3/4");
  await until("it is refused", async () => /not allowed by the code/.test(await answer(page)));
  await page.getByText("head it off").first().waitFor();
  await page.getByText("engineer").first().waitFor();
});

journey("what was found is worked beside what was drawn", {}, async ({ phone }) => {
  const page = await openMember(phone);
  await page.locator("#in-hand").fill("15'");
  await until("2x10 carries it", async () => /^2x10 carries it/.test(await answer(page)));
  const drawn = await answer(page);
  await fillIn(page, "Spacing found", "17");
  await page.getByRole("heading", { name: "As drawn" }).waitFor();
  await until("the share is another", async () => (await answer(page)) !== drawn && /^2x10/.test(await answer(page)));
  await key(page, "Undo").tap();
  await until("one step back", async () => (await answer(page)) === drawn);
});

journey("a size is judged by a tap, and nonsense keeps the last good answer", {}, async ({ phone }) => {
  const page = await openMember(phone);
  await page.locator("#in-hand").fill("15'");
  await page.locator(".size", { hasText: "2x8" }).tap();
  await until("2x8 is judged", async () => /^2x8 too small/.test(await answer(page)));
  await key(page, "Find the smallest instead").tap();
  await until("the smallest again", async () => /^2x10 carries it/.test(await answer(page)));
  await page.evaluate(() => (document.getElementById("page").scrollTop = 0));
  await page.locator("#in-hand").fill("400 ft");
  await page.getByText("not updated").first().waitFor();
  await page.getByText(/from 1' .* is taken/).first().waitFor();
  assert.match(await answer(page), /2x10/);
});

test("what was typed for a member is there after the battery died", { timeout: 120_000 }, async () => {
  const profile = await temporaryFolder();
  const site = await new Site(SITE_DIR).start();
  const first = await Phone.start(site, { profile });
  let second;
  try {
    const page = await openMember(first);
    await kept(page);
    await lookAt(page, "Beam");
    await fillIn(page, "Strip of floor", "14'");
    await page.waitForTimeout(600); // the promise: kept half a second after the last key
    kill(profile);
    await first.context.close().catch(() => undefined);
    second = await Phone.start(site, { profile });
    const again = second.page;
    await again.goto(site.at("member/"));
    await ready(again);
    await again.getByRole("heading", { level: 1, name: "Beam" }).waitFor({ state: "attached" });
    await until("the strip is there", async () =>
      plain(await again.locator(".chip", { hasText: "Strip of floor" }).first().innerText()).includes("14'"));
    assert.deepEqual(second.problems, []);
  } finally {
    await first.context.close().catch(() => undefined);
    await second?.close();
    await site.stop();
    await rm(profile, { recursive: true, force: true });
  }
});
