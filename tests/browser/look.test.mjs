// Sun, dusk and paper: readable, reachable, and the same to those who do not see it.
import assert from "node:assert/strict";
import { line, next, openSaved, save, type } from "./desk.mjs";
import { assertAccessible, assertFitsWidth, journey, ready } from "./harness.mjs";
import { BRACING, LAYOUT, MEMBERS } from "./kinds.mjs";
import { back, fillIn, key, log, look as lookAt, openWalk, startWalk } from "./walk.mjs";

const themeOf = (page) => page.evaluate(() => document.documentElement.dataset.theme);
const ground = (page) => page.evaluate(() => getComputedStyle(document.body).backgroundColor);

journey("one tap to full sun and back, kept over a reload", {}, async ({ phone, page }) => {
  await phone.open();
  const before = await ground(page);
  const sun = page.getByRole("button", { name: "Full sun" });
  await sun.tap();
  assert.equal(await themeOf(page), "sun");
  assert.equal(await ground(page), "rgb(255, 255, 255)");
  await page.reload();
  await ready(page);
  assert.equal(await themeOf(page), "sun");
  await sun.tap();
  assert.equal(await ground(page), before);
});

/** Walks through everything that can be on the screen and looks at each. */
async function everyScreen(page, look) {
  await look("first");
  await line(page).tap();
  await page.keyboard.type("7z");
  await look("wrong text");
  await page.keyboard.press("Enter");
  await type(page, "7' 6");
  await next(page).tap();
  await look("a choice");
  for (const summary of await page.locator("summary").all()) await summary.tap();
  await look("all inputs");
  await page.locator(".size", { hasText: "2-2x6" }).first().tap();
  await look("too small");
  await page.getByRole("button", { name: "Working" }).tap();
  await page.locator("dialog[open]").waitFor();
  await page.waitForTimeout(250);
  await look("the working");
  await page.getByRole("button", { name: "Close", exact: true }).tap();
  await save(page);
  await look("a notice");
  await openSaved(page);
  await page.waitForTimeout(250);
  await look("saved checks");
  await page.getByRole("button", { name: "Close", exact: true }).tap();
  await page.getByRole("link", { name: "Joists, rafters, studs, posts" }).tap();
  await everyScreenOfMembers(page, look);
  await page.getByRole("link", { name: "Bracing" }).tap();
  await everyScreenOfBracing(page, look);
  await page.getByRole("link", { name: "Layout" }).tap();
  await everyScreenOfLayout(page, look);
  await everyScreenOfSite(page, look);
}

/** Every kind of quick check of a page, with all its inputs. */
async function everyKind(page, look, kinds) {
  for (const kind of kinds) {
    await page.locator("details.kinds:not([open]) summary").tap();
    await look(`the choice of a kind, at ${kind}`);
    await page.locator(".kind").getByText(kind, { exact: true }).tap();
    await page.getByRole("heading", { level: 1, name: kind, exact: true }).waitFor({ state: "attached" });
    await look(kind);
    const folded = page.locator(".inputs details:not([open]) > summary");
    while (await folded.count()) await folded.first().tap();
    await look(`all inputs of ${kind}`);
  }
}

/** The same for Bracing. */
async function everyScreenOfBracing(page, look) {
  await page.waitForURL(/\/bracing\//);
  await ready(page);
  await everyKind(page, look, BRACING);
}

/** The same for Layout. */
async function everyScreenOfLayout(page, look) {
  await page.waitForURL(/\/layout\//);
  await ready(page);
  await everyKind(page, look, LAYOUT);
}

/** The same for the members beside the header. */
async function everyScreenOfMembers(page, look) {
  await page.waitForURL(/\/member\//);
  await ready(page);
  await everyKind(page, look, MEMBERS);
  await page.locator("details.kinds:not([open]) summary").tap();
  await page.locator(".kind", { hasText: "Rafter" }).tap();
  await page.getByRole("button", { name: "Working", exact: true }).tap();
  await page.locator("dialog[open]").waitFor();
  await page.waitForTimeout(250);
  await look("the working of a rafter");
  await page.getByRole("button", { name: "Close", exact: true }).tap();
}

/** The same for Site. */
async function everyScreenOfSite(page, look) {
  await page.getByRole("link", { name: "Site" }).tap();
  await page.waitForURL(/\/site\//);
  await ready(page);
  await look("the first questions of Site");
  await page.getByRole("button", { name: "Show all", exact: true }).tap();
  for (const topic of ["Push", "Uplift", "Snow", "Weight", "Parts"]) {
    await page.getByRole("button", { name: topic, exact: true }).tap();
    await look(`Site, ${topic}`);
  }
  const folded = page.locator("details:not([open]) > summary");
  while (await folded.count()) await folded.first().tap();
  await look("all inputs of Site");
  await page.getByRole("button", { name: "Working", exact: true }).tap();
  await page.locator("dialog[open]").waitFor();
  await page.waitForTimeout(250);
  await look("the working of Site");
  await page.getByRole("button", { name: "Close", exact: true }).tap();
}

/** The same for a walk. */
async function everyScreenOfAWalk(phone, look) {
  const page = await openWalk(phone);
  await look("before the first walk");
  await startWalk(page, "W1", { "Stud spacing": "16", Nail: "8d common" });
  await look("a mark");
  for (const kind of ["Nails", "Bolts, hold-downs, ties", "Notches and holes", "Plumb and plane", "Moisture"]) {
    await lookAt(page, kind);
    await look(kind);
    await back(page);
  }
  await lookAt(page, "Stud spacing");
  for (let stud = 0; stud < 2; stud += 1) await page.locator(".offer").tap();
  await page.locator("#in-hand").fill("49");
  await page.locator("#in-hand").press("Enter");
  await fillIn(page, "Where on the mark", "north end");
  const folded = page.locator("details:not([open]) > summary");
  while (await folded.count()) await folded.first().tap();
  await look("all inputs of a look");
  await log(page);
  await look("what was found");
  await back(page);
  await key(page, "The drawing asks").tap();
  await look("the drawing asks");
  await back(page);
  await back(page);
  await look("the walk");
  await key(page, "Record").tap();
  await look("the record");
  await key(page, "The head").tap();
  await look("the head");
  await back(page);
  await back(page);
  await page.getByRole("button", { name: /^Walks/ }).tap();
  await look("walks");
}

for (const theme of ["paper", "dusk", "sun"]) {
  journey(`no barrier anywhere, ${theme}`, {}, async ({ phone, page }) => {
    await page.addInitScript((name) => localStorage.setItem("galeframe.theme", JSON.stringify(name)), theme);
    const look = async (what) => {
      await assertFitsWidth(page);
      await assertAccessible(page).catch((error) => {
        throw new Error(`${theme}, ${what}: ${error.message}`, { cause: error });
      });
    };
    await phone.open();
    await everyScreen(page, look);
    await everyScreenOfAWalk(phone, look);
  });
}

/** Everything that can be tapped and is in the layout, with its size. */
const targets = (page) =>
  page.evaluate(() =>
    [...document.querySelectorAll("button, a, summary, .option, .typed-text, [role=slider]")]
      .map((element) => ({ element, box: element.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0)
      .map(({ element, box }) => ({
        name: element.getAttribute("aria-label") ?? element.textContent.trim().slice(0, 30),
        width: Math.round(box.width),
        height: Math.round(box.height),
      })),
  );

/** Every size of letters that is on the screen, with a piece of its text. */
const letters = (page) =>
  page.evaluate(() => {
    const found = {};
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      const text = walk.currentNode.textContent.trim();
      const parent = walk.currentNode.parentElement;
      if (text && parent.checkVisibility() && !parent.closest(".said, script, style")) {
        found[Number.parseFloat(getComputedStyle(parent).fontSize)] ??= text.slice(0, 40);
      }
    }
    return found;
  });

journey("every target takes a gloved thumb, and every letter can be read", {}, async ({ phone, page }) => {
  const look = async (what) => {
    for (const { name, width, height } of await targets(page)) {
      assert.ok(width >= 48 && height >= 48, `${what}: ${name} is ${width} by ${height}`);
    }
    for (const [size, text] of Object.entries(await letters(page))) {
      assert.ok(Number(size) >= 15, `${what}: "${text}" is set in ${size} px`);
    }
  };
  await phone.open();
  await everyScreen(page, look);
  await everyScreenOfAWalk(phone, look);
});

journey("with the phone's keys up the answer and the input are in view", {}, async ({ phone, page }) => {
  await phone.open();
  await line(page).tap();
  await page.setViewportSize({ width: 360, height: 440 });
  await page.keyboard.type("9' 2");
  for (const selector of [".answer-figure", ".verdict strong", ".share", "#in-hand", ".echo", ".keys .sign"]) {
    const box = await page.locator(selector).first().boundingBox();
    assert.ok(box && box.y >= 0 && box.y + box.height <= 440, `${selector} stands at ${box?.y}`);
  }
});

journey("a page on its side puts the sheet beside the hands", {}, async ({ phone, page }) => {
  await page.setViewportSize({ width: 740, height: 360 });
  await phone.open();
  const [sheet, hand] = [await page.locator(".picture").boundingBox(), await page.locator(".hand").boundingBox()];
  assert.ok(sheet.x + sheet.width <= hand.x + 1 && sheet.height > 80);
  await assertFitsWidth(page);
  await page.goto(phone.site.at("member/#/member/ridge"));
  await ready(page);
  const [member, inputs] = [await page.locator(".picture").boundingBox(), await page.locator(".hand").boundingBox()];
  assert.ok(member.x + member.width <= inputs.x + 1 && inputs.y < 360, JSON.stringify([member, inputs]));
  await assertFitsWidth(page);
});
