// Where things stand on the page of Inspection, for the journeys: one place to change when the page does.
import { ready } from "./harness.mjs";

/** Opens the page of Inspection. */
export async function openWalk(phone, page = phone.page) {
  await page.goto(phone.site.at("#/inspection"));
  await page.waitForURL(/\/inspection\//);
  await ready(page);
  return page;
}

/** A key by its word. */
export const key = (page, name) => page.getByRole("button", { name, exact: true });

/** Starts a walk and keeps its first mark under a name, with what the drawing asks typed in. */
export async function startWalk(page, mark, asks = {}) {
  await key(page, "Start a walk").tap();
  await newMark(page, mark, asks);
}

/** Keeps the mark whose form is open. */
export async function newMark(page, mark, asks = {}) {
  await page.getByLabel("Mark", { exact: true }).fill(mark);
  for (const [label, value] of Object.entries(asks)) await fillIn(page, label, value);
  await key(page, `Keep ${mark}`).tap();
  await page.getByRole("heading", { name: mark, exact: true }).waitFor();
}

/** Brings an input to hand by its chip and fills it in: types a text, or taps the option of that name. */
export async function fillIn(page, label, value) {
  const chip = page.locator(".chip").filter({ has: page.locator(`.chip-label:text-is(${JSON.stringify(label)})`) });
  const group = page.locator("details:not([open])").filter({ has: page.locator("summary") });
  for (let folded = await group.count(); folded > 0 && !(await chip.count()); folded -= 1) {
    await group.nth(folded - 1).locator("summary").tap();
  }
  await chip.first().tap();
  const line = page.locator("#in-hand");
  if (await line.isVisible()) {
    await line.fill(value);
    await line.blur();
    // The page moves a moment after the line was left; the next tap waits for it, as a thumb does.
    await page.locator(".typing").waitFor({ state: "detached" });
  } else {
    await page.locator(".hand .option").filter({ hasText: value }).first().tap();
  }
}

/** Opens a look of the mark that is open. */
export async function look(page, kind) {
  await page.locator(".kind-card", { hasText: kind }).tap();
  await page.locator(".look .hand").waitFor();
}

/** A text with its fractions as they are typed. */
export const plain = (text) => text.replaceAll("\u2044", "/");

/** The figure and the word of the answer. */
export async function answer(page) {
  const strip = page.locator(".answer").first();
  const figure = await strip.locator(".answer-figure .figure-set").innerText();
  return plain(`${figure} ${await strip.locator(".verdict strong").innerText()}`);
}

/** Logs the look and waits for what was found. */
export async function log(page) {
  await key(page, "Log it").tap();
  await page.locator(".point-page").waitFor();
}

/** Back to what this belongs to. */
export async function back(page) {
  await page.getByRole("button", { name: /^Back to/ }).tap();
}
