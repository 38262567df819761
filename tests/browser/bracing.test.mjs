// Bracing: walls, hold-downs, the path of uplift and layers, by touch, with no signal.
import assert from "node:assert/strict";
import { assertFitsWidth, journey, kept, ready, until } from "./harness.mjs";
import { BRACING, lookAt } from "./kinds.mjs";
import { answer, fillIn, key, plain } from "./walk.mjs";

/** Opens the page from the header's, as a thumb does. */
async function openBracing(phone, page = phone.page) {
  await page.goto(phone.site.at("#/members"));
  await ready(page);
  await page.getByRole("link", { name: "Bracing" }).tap();
  await page.waitForURL(/\/bracing\//);
  await ready(page);
  return page;
}

journey("every kind of bracing opens by touch, answers, and fits the width, with no signal", {}, async ({ site, phone }) => {
  const page = await openBracing(phone);
  await kept(page);
  await site.stop();
  for (const kind of BRACING) {
    await lookAt(page, kind);
    const said = await answer(page);
    assert.ok(said.length > 5, `${kind}: ${said}`);
    assert.equal(await page.locator("section.group:not(:has(.chip))").count(), 0, `${kind}: a heading without inputs`);
    const picture = page.locator(".picture svg").first();
    assert.ok((await picture.locator("*").count()) > 5, `${kind} is drawn`);
    await assertFitsWidth(page);
  }
});

journey("a wall from its pieces to its nails, with no signal, and it is there after a restart of the page", {}, async ({ site, phone }) => {
  const page = await openBracing(phone);
  await kept(page);
  await site.stop();
  await page.reload();
  await ready(page);
  await page.locator("#in-hand").fill("3', 4'");
  await until("closer nails", async () => /^7\/16" 8d at 4" carries it/.test(plain(await answer(page))));
  await page.getByText("Hold each end down for").first().waitFor();
  await page.locator(".size", { hasText: '8d at 6"' }).first().tap();
  await until("6 in is not enough", async () => /8d at 6" not enough/.test(plain(await answer(page))));
  await key(page, "Find the lightest instead").tap();
  await until("the lightest again", async () => /^7\/16" 8d at 4" carries it/.test(plain(await answer(page))));
  await fillIn(page, "Hold-down carries", "1,000 lb");
  await until("the hold-down is too weak", async () => /the hold-down is too weak/.test(await answer(page)));
  await key(page, "Undo").tap();
  await key(page, "Working").tap();
  await page.locator("dialog[open]").getByText("SDPWS").first().waitFor();
  await page.goBack();
  await page.locator("dialog[open]").waitFor({ state: "detached" });
  await page.getByRole("status").getByText("kept on this phone").waitFor();
  await page.reload();
  await ready(page);
  const chip = page.locator(".chip", { hasText: "Full-height pieces" }).first();
  assert.match(plain(await chip.innerText()), /3', 4'/);
  await assertFitsWidth(page);
});

journey("the path of uplift names its weakest link and asks what is not said", {}, async ({ phone }) => {
  const page = await openBracing(phone);
  await lookAt(page, "Path of uplift");
  await page.getByText("Rafter to plate: what holds").first().waitFor();
  await fillIn(page, "Anchor bolts", "24");
  await fillIn(page, "Rafter to plate", "3 8d common");
  const weakest = () => page.locator(".answer").first().innerText();
  await until("toe nails are the weakest", async () => /not enough[^]*rafter to plate/.test(await weakest()));
  await page.getByText("is missing at each").first().waitFor();
  await fillIn(page, "Rafter to plate", "a good strap");
  await page.getByText("not updated").first().waitFor();
  await fillIn(page, "Rafter to plate", "900 lb");
  await until("another is the weakest", async () => !/rafter to plate/.test(await weakest()));
});

journey("a gable end and a porch post are lifted, each by its own path, with no signal", {}, async ({ site, phone }) => {
  const page = await openBracing(phone);
  await kept(page);
  await site.stop();
  await lookAt(page, "Path of uplift");
  await fillIn(page, "What is lifted", "a gable end and its overhang");
  await page.getByText("Outlooker to plate: what holds").first().waitFor();
  await fillIn(page, "Outlooker to gable wall", "150 lb");
  await page.getByText("On which side of the plate are the ties?").first().waitFor();
  await fillIn(page, "Anchor bolts", "16");
  await until("the outlooker's tie is short", async () => /not enough[^]*outlooker to plate/.test(await page.locator(".answer").first().innerText()));
  await fillIn(page, "The overhang stands on", "a ladder of short blocks");
  await until("an engineer decides", async () => /not for this tool to decide/.test(await answer(page)));
  await fillIn(page, "What is lifted", "a porch post");
  await page.getByText("Under an open porch wind pushes up").first().waitFor();
  await fillIn(page, "Lift on the porch roof", "25");
  await fillIn(page, "Footing weighs", "900 lb");
  await until("the footing is too light", async () => /not enough[^]*weight of the footing/.test(await page.locator(".answer").first().innerText()));
  await fillIn(page, "Footing weighs", "3,000 lb");
  await until("the next link is asked", async () => /Rafter to beam\?/.test(await answer(page)));
  assert.ok((await page.locator(".picture svg").first().locator("*").count()) > 5, "the porch is drawn");
  await assertFitsWidth(page);
});

journey("a schedule is pasted, and a wall is checked by its mark, with no signal", {}, async ({ site, phone }) => {
  const page = await openBracing(phone);
  await kept(page);
  await site.stop();
  await lookAt(page, "Schedule");
  const lines = page.locator("textarea#in-hand");
  await lines.fill("Mark,Sheathing,Nail,Edge,Field,Hold-down\nP1,7/16,8d,4,12,HD1\nP2,15/32,10d,3,12,HD2");
  await until("both marks are read", async () => /^2 marks from the drawing/.test(await answer(page)));
  await page.getByText("P1 names HD1").first().waitFor();
  await lines.fill("P1: 7/16 8d 4, hold-down HD1\nHD1: hold-down 1,500 lb\nP3: glue");
  await page.getByText("Line 3").first().waitFor();
  await lines.fill("P1: 7/16 8d 4, hold-down HD1\nHD1: hold-down 1,500 lb");
  await until("one mark", async () => /^1 mark from the drawing/.test(await answer(page)));
  assert.match(await page.locator("pre.to-copy").first().innerText(), /^P1: 7\/16" 8d at 4", hold-down HD1/);
  assert.match(await page.locator("pre.to-copy").nth(1).innerText(), /^Mark,Panel,Nail,Edge,Hold-down/);
  await assertFitsWidth(page);
  await lookAt(page, "Shear wall");
  await fillIn(page, "Panels and nails as drawn", "P1");
  await until("its own hold-down is asked", async () => /8d at 4" the hold-down is too weak/.test(plain(await answer(page))));
});

journey("the schedule and what is worked stand side by side, wall by wall, with no signal", {}, async ({ site, phone }) => {
  const page = await openBracing(phone);
  await kept(page);
  await site.stop();
  await lookAt(page, "Schedule");
  await page.locator("textarea#in-hand").fill("W1: 7/16 8d 6/12, hold-down HD1\nHD1: hold-down 2,000 lb");
  await until("the schedule is read", async () => /^1 mark from the drawing/.test(await answer(page)));
  await lookAt(page, "Drawn and worked");
  const lines = page.locator("textarea#in-hand");
  await lines.fill("Front: W1, walls 5', 5', high 8', push 1,600 lb");
  await until("it carries as it is drawn", async () => /^1 of 1 wall carried as drawn/.test(await answer(page)));
  await page.getByText("both agree").first().waitFor();
  await lines.fill("Front: W1, walls 5', 5', high 8', push 1,600 lb\nBack: W1, walls 3', high 8', push 2,000 lb\nSide: walls 12', high 8', push 900 lb");
  await until("two are asked about", async () => /^2 of 3 walls to ask the engineer about/.test(await answer(page)));
  await page.getByText("the drawing stands until they change it").first().waitFor();
  await page.getByText("the drawing does not name this wall").first().waitFor();
  const columns = page.locator(".results", { has: page.getByRole("heading", { name: "Drawn and worked", exact: true }) });
  const back = columns.getByRole("row").filter({ hasText: "Back" });
  await until("both columns", async () => /W1: 7\/16" 8d at 6"[^]*15\/32" 10d at 2"/.test(plain(await back.innerText())));
  await assertFitsWidth(page);
  await lines.fill("Front: W1, walls 5', 5', high 8'");
  await page.getByText("the push along it is not given").first().waitFor();
  await fillIn(page, "The drawing's schedule", "W1: 7/16 8d 2, hold-down HD1\nHD1: hold-down 9,000 lb");
  await fillIn(page, "Walls and their marks", "Back: W1, walls 3', high 8', push 1,600 lb");
  await until("the schedule is typed here as well", async () => /^1 of 1 wall carried as drawn/.test(await answer(page)));
});

journey("a walk's mark is filled from the schedule, with no signal", {}, async ({ site, phone }) => {
  const page = await openBracing(phone);
  await kept(page);
  await site.stop();
  await lookAt(page, "Schedule");
  await page.locator("textarea#in-hand").fill("sheet S2.1 rev B\nP1: 15/32 10d 3/12, studs 2x6\nP2: 7/16 8d 6");
  await until("both marks are read", async () => /^2 marks/.test(await answer(page)));
  await page.getByRole("status").getByText("kept on this phone").waitFor();
  await page.getByRole("link", { name: "Inspection" }).tap();
  await page.waitForURL(/\/inspection\//);
  await ready(page);
  await key(page, "Start a walk").tap();
  await key(page, "P1").tap();
  const chip = (label) => page.locator(".chip").filter({ has: page.locator(`.chip-label:text-is("${label}")`) }).first();
  assert.match(plain(await chip("Nail").innerText()), /10d common/);
  assert.match(plain(await chip("Edge spacing").innerText()), /3"/);
  assert.match(plain(await chip("Drawing").innerText()), /S2\.1/);
  await assertFitsWidth(page);
});

journey("a panel over foam braces nothing, and the way out is said", {}, async ({ phone }) => {
  const page = await openBracing(phone);
  await lookAt(page, "Wall layers");
  await until("as drawn it braces", async () => /braces the wall/.test(await answer(page)));
  await page.locator("#in-hand").fill("foam 1, osb 7/16, wrap, siding 1/2");
  await until("it braces nothing", async () => /braces nothing/.test(await answer(page)));
  await page.getByText("Nail the panel to the studs themselves").first().waitFor();
});

journey("a high wall has a level joint, and board on its other face adds to it, with no signal", {}, async ({ site, phone }) => {
  const page = await openBracing(phone);
  await kept(page);
  await site.stop();
  await page.locator("#in-hand").fill("20'");
  await fillIn(page, "Wall height", "10'");
  await page.getByText("Block the level joint").first().waitFor();
  await page.locator(".size", { hasText: '8d at 6"' }).first().tap();
  await fillIn(page, "Level joints of panels", "on nothing");
  await page.getByText("is an engineer's to design").first().waitFor();
  await fillIn(page, "Sheets are long", "10'");
  await page.getByText("no level joint is left").first().waitFor();
  await fillIn(page, "Level joints of panels", "on framing");
  await fillIn(page, "Other face", "gypsum 1/2");
  await page.getByText("not updated").first().waitFor();
  await fillIn(page, "Other face", "gypsum 1/2 5d cooler 7");
  await page.getByText("is added in wind").first().waitFor();
  await assertFitsWidth(page);
});
