// Walls and floors that are laid out, by touch, with no signal.
import assert from "node:assert/strict";
import { assertFitsWidth, journey, kept, ready, until } from "./harness.mjs";
import { LAYOUT, lookAt } from "./kinds.mjs";
import { answer, fillIn, key, plain } from "./walk.mjs";

/** Opens Layout from another page, as a thumb does. */
async function openLayout(phone, page = phone.page) {
  await page.goto(phone.site.at("#/members"));
  await ready(page);
  await page.getByRole("link", { name: "Layout" }).tap();
  await page.waitForURL(/\/layout/);
  await ready(page);
  return page;
}

journey("every kind of layout opens by touch, answers, and fits the width, with no signal", {}, async ({ site, phone }) => {
  const page = await openLayout(phone);
  await kept(page);
  await site.stop();
  for (const kind of LAYOUT) {
    await lookAt(page, kind);
    const said = await answer(page);
    assert.ok(said.length > 5, `${kind}: ${said}`);
    assert.ok((await page.locator(".picture svg").first().locator("*").count()) > 5, `${kind} is drawn`);
    await assertFitsWidth(page);
  }
});

journey("a wall with a door and a window, to the first pull after the door, with no signal", {}, async ({ site, phone }) => {
  const page = await openLayout(phone);
  await kept(page);
  await site.stop();
  await lookAt(page, "Wall layout");
  await page.locator("#in-hand").fill("16'");
  await page.locator("#in-hand").blur();
  await fillIn(page, "Openings", "door 3' x 6' 8\" at 4'\nwindow 4' x 4' at 10', sill 2' 8\"");
  await until("studs with their length", async () => /studs, 92-5\/8" from plate to plate/.test(plain(await answer(page))));
  const pulls = page.locator("section.results").filter({ has: page.getByRole("heading", { name: "Pulls from the left end" }) });
  // The door ends at 84 in: its far jack is the first pull after it, then its king.
  const rows = (await pulls.locator("tbody tr").allInnerTexts()).map(plain);
  const after = rows.findIndex((row) => row.startsWith('84"'));
  assert.match(rows[after], /J jack stud/);
  assert.match(rows[after + 1], /^85-1\/2".*K king stud/s);
  await key(page, "Print").waitFor();
  await assertFitsWidth(page);
});
