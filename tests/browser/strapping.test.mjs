// Ceiling strapping: rows and strips, and shims from what a laser reads, by touch, with no signal.
import assert from "node:assert/strict";
import { assertFitsWidth, journey, kept, ready, until } from "./harness.mjs";
import { lookAt } from "./kinds.mjs";
import { answer, fillIn, plain } from "./walk.mjs";

/** Opens the page from the header's, as a thumb does. */
async function openLayout(phone, page = phone.page) {
  await page.goto(phone.site.at("#/members"));
  await ready(page);
  await page.getByRole("link", { name: "Layout" }).tap();
  await page.waitForURL(/\/layout\//);
  await ready(page);
  return page;
}

journey("a ceiling is strapped: three rows of readings, the worst shim, and it is there after a restart with no signal", {}, async ({ site, phone }) => {
  const page = await openLayout(phone);
  await kept(page);
  await lookAt(page, "Ceiling strapping");
  await until("the set-out is there without readings", async () => /^10 rows at 16"/.test(plain(await answer(page))));
  await page.getByText("First strip tight to the near wall").first().waitFor();
  // Three joists, three rows.
  await fillIn(page, "Room across the joists", "64\"");
  await fillIn(page, "Room along the joists", "34\"");
  await until("three rows", async () => /^3 rows/.test(plain(await answer(page))));
  await fillIn(page, "Readings", "1-1/4, 1-5/8, 1-3/8\n1-1/2, 2, 1-1/8\n1-1/4, -, 1-1/4");
  await until("the worst shim", async () => /^Shim 7\/8" at most/.test(plain(await answer(page))));
  await page.getByText("row 2, joist 2: 7/8\"").first().waitFor();
  assert.ok((await page.locator(".picture svg").first().locator("*").count()) > 10, "the plan is drawn");
  await assertFitsWidth(page);
  await fillIn(page, "Readings", "1-1/4, 1-5/8, 1-3/8\n1-1/2, wet, 1-1/8\n1-1/4, -, 1-1/4");
  await page.getByText("joist 2: wet").first().waitFor();
  await fillIn(page, "Readings", "1-1/4, 1-5/8, 1-3/8\n1-1/2, 2, 1-1/8\n1-1/4, -, 1-1/4");
  await until("it is answered again", async () => /^Shim 7\/8" at most/.test(plain(await answer(page))));
  await page.getByRole("status").getByText("kept on this phone").waitFor();
  await site.stop();
  await page.reload();
  await ready(page);
  await until("the worst shim is still there", async () => /^Shim 7\/8" at most/.test(plain(await answer(page))));
  await assertFitsWidth(page);
});
