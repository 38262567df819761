// Where things stand on the screen, for the journeys: one place to change when the screen does.
import assert from "node:assert/strict";
import { until } from "./harness.mjs";

/** The figure of the answer: `2-2x10`. */
export const figure = (page) => page.locator(".answer-figure .figure-set").innerText();

/** The verdict in words and its share: `carries it 82 %, bending`. */
export const verdict = async (page) => (await page.locator(".verdict").innerText()).replace(/\s+/g, " ").trim();

/** The line that is typed into. */
export const line = (page) => page.locator("#in-hand");

/** What was understood, or what is wrong, under the line. */
export const echo = (page) => page.locator(".echo :is(.figure-set, .problem)").innerText();

/** What the title block says about keeping. */
export const keeping = (page) => page.locator(".kept").innerText();

/** The key that leads on to the next input. */
export const next = (page) => page.getByRole("button", { name: /^Next/ });

/** The chip of an input. */
export const chip = (page, label) => page.locator(".chip").filter({ has: page.locator(`.chip-label:text("${label}")`) });

/** Replaces what is in the line, key by key as a thumb does, and leaves it. */
export async function type(page, text) {
  await line(page).tap();
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
  await page.locator(".typing").waitFor({ state: "detached" });
  // What is read is laid down with the next picture; an eye that looks after the last key sees it.
  await page.evaluate(() => new Promise((seen) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(seen, 50)))));
}

/** Waits until the title block says that everything is kept. */
export const keptOnThisPhone = (page) => until("kept on this phone", async () => (await keeping(page)) === "kept on this phone");

/** Saves the check under the name that is offered or another, and waits until it is told to be kept. */
export async function save(page, name) {
  await page.getByRole("button", { name: "Save", exact: true }).tap();
  if (name) await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByRole("button", { name: /^Save \S/ }).tap();
  await page.locator(".notice", { hasText: "is kept on this phone" }).waitFor();
}

/** Puts away what is to be read. */
export const putAwayNotice = (page) => page.locator(".notice").getByRole("button", { name: "OK" }).tap();

/** The sheet of saved checks. */
export async function openSaved(page) {
  await page.getByRole("button", { name: /^Saved/ }).tap();
  return page.locator("dialog[open]");
}

/** Drags with one thumb. `steps` are distances from the start, each `pause` milliseconds after the one before. */
export async function drag(page, target, steps, pause = 16) {
  const box = await target.boundingBox();
  const session = await page.context().newCDPSession(page);
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 3 };
  const touch = (type, touchPoints) => session.send("Input.dispatchTouchEvent", { type, touchPoints });
  await touch("touchStart", [from]);
  for (const step of steps) {
    await page.waitForTimeout(pause);
    await touch("touchMove", [{ x: from.x + step, y: from.y }]);
  }
  await touch("touchEnd", []);
  await session.detach();
}

/** Nothing that matters may be out of sight. */
export async function assertInView(page, selector) {
  const seen = await page.locator(selector).first().evaluate((element) => {
    const box = element.getBoundingClientRect();
    const top = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
    return box.top >= 0 && box.bottom <= innerHeight && (element.contains(top) || top?.contains(element));
  });
  assert.ok(seen, `${selector} is out of sight`);
}
