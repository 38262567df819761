// Layout: rafters, hips, jacks and sheathing, by touch, with no signal.
import assert from "node:assert/strict";
import { assertFitsWidth, journey, kept, ready, until } from "./harness.mjs";
import { LAYOUT, lookAt } from "./kinds.mjs";
import { answer, fillIn, key, plain } from "./walk.mjs";

/** Opens the page from the header's, as a thumb does. */
async function openLayout(phone, page = phone.page) {
  await page.goto(phone.site.at("#/members"));
  await ready(page);
  await page.getByRole("link", { name: "Layout" }).tap();
  await page.waitForURL(/\/layout\//);
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
    assert.equal(await page.locator("section.group:not(:has(.chip))").count(), 0, `${kind}: a heading without inputs`);
    const picture = page.locator(".picture svg").first();
    assert.ok((await picture.locator("*").count()) > 5, `${kind} is drawn`);
    await assertFitsWidth(page);
  }
});

journey("a rafter from its pitch to its cuts, with no signal, and it is there after a restart of the page", {}, async ({ site, phone }) => {
  const page = await openLayout(phone);
  await kept(page);
  await site.stop();
  await page.reload();
  await ready(page);
  await fillIn(page, "Pitch", "8/12");
  await fillIn(page, "Run", "12'");
  await fillIn(page, "Seat on the plate", "3");
  // 144 in less half of a 1-1/2 in ridge, over the cosine of 8/12: 172.16 in.
  await until("the rafter's length", async () => /14' 4-3\/16"/.test(plain(await answer(page))));
  await page.getByText("Take a 2x8").first().waitFor();
  await key(page, "Working").tap();
  await page.locator("dialog[open]").getByText("line length").first().waitFor();
  await page.goBack();
  await page.locator("dialog[open]").waitFor({ state: "detached" });
  await page.getByRole("status").getByText("kept on this phone").waitFor();
  await page.reload();
  await ready(page);
  await until("the same length", async () => /14' 4-3\/16"/.test(plain(await answer(page))));
  await assertFitsWidth(page);
});

journey("a seat that cuts too deep is called out, with the one that does not", {}, async ({ phone }) => {
  const page = await openLayout(phone);
  await fillIn(page, "Seat on the plate", "5-1/2");
  await until("it is not allowed", async () => /not allowed by the code/.test(await answer(page)));
  await page.getByText('Make the seat 4" at the most').first().waitFor();
  await fillIn(page, "Seat on the plate", "4");
  await until("it is a rafter again", async () => /from ridge cut to heel/.test(await answer(page)));
});

journey("two pitches that meet in no line are said at the second", {}, async ({ phone }) => {
  const page = await openLayout(phone);
  await lookAt(page, "Hip, valley");
  await fillIn(page, "Angle of the corner", "135");
  await fillIn(page, "Pitch of the other roof", "3/12");
  await page.getByText("meet in a line that no jack comes to").first().waitFor();
  await page.getByText("not updated").first().waitFor();
  await fillIn(page, "Pitch of the other roof", "5/12");
  await until("the hip is worked again", async () => (await page.getByText("not updated").count()) === 0);
});
