// The header check by touch: the shortest path, the tape, a slip of the thumb, the picture.
import assert from "node:assert/strict";
import { assertInView, chip, drag, echo, figure, line, next, type, verdict } from "./desk.mjs";
import { journey, until } from "./harness.mjs";

for (const size of ["small", "large"]) {
  journey(`from opening the app to an answer, on a ${size} phone`, { size }, async ({ phone, page }) => {
    await phone.open();
    const before = await figure(page);
    await line(page).tap();
    for (const key of "11' 6") {
      await page.keyboard.type(key);
      await assertInView(page, ".answer-figure");
      await assertInView(page, ".verdict strong");
    }
    assert.equal(await echo(page), "11' 6\"");
    await page.keyboard.press("Enter");
    assert.notEqual(await figure(page), before, "a wider opening takes another size");
    const forRoof = await figure(page);
    await next(page).tap();
    await chip(page, "It carries").tap();
    await page.locator(".option", { hasText: "roof and 2 floors, clear span" }).tap();
    await until("the answer follows the load", async () => (await figure(page)) !== forRoof);
    assert.match(await verdict(page), /^(carries it|at the limit|too small|not )/);
  });
}

journey("the width by the tape", {}, async ({ phone, page }) => {
  await phone.open();
  const tape = page.getByRole("slider");
  const inches = async () => Number(await tape.getAttribute("aria-valuenow"));
  const start = await inches();
  await drag(page, tape, [-30, -70, -110, -150, -190, -230]);
  const flicked = await inches();
  assert.ok(flicked > start + 4, `a quick thumb crosses inches: ${start} to ${flicked}`);
  assert.match(await line(page).inputValue(), /^\d+' \d+(-\d+\/\d+)?"$/);
  await drag(page, tape, [-1, -2, -3, -4, -5, -6, -7, -8], 60);
  const crept = await inches();
  assert.ok(crept > flicked && crept - flicked <= 3 / 16, `a slow thumb moves sixteenths: ${flicked} to ${crept}`);
  await page.getByRole("button", { name: "One sixteenth more" }).tap();
  assert.equal(await inches(), crept + 1 / 16);
  await page.getByRole("button", { name: "One inch less" }).tap();
  assert.equal(await inches(), crept + 1 / 16 - 1);
  assert.match(await tape.getAttribute("aria-valuetext"), /feet|foot|inch/);
  await assertInView(page, ".answer-figure");
});

journey("the tape by keys, and its ends", {}, async ({ phone, page }) => {
  await phone.open();
  const tape = page.getByRole("slider");
  const inches = async () => Number(await tape.getAttribute("aria-valuenow"));
  await tape.focus();
  const start = await inches();
  await page.keyboard.press("ArrowRight");
  assert.equal(await inches(), start + 1 / 16);
  await page.keyboard.press("End");
  assert.equal(await inches(), Number(await tape.getAttribute("aria-valuemax")));
  await page.keyboard.press("ArrowRight");
  assert.equal(await inches(), Number(await tape.getAttribute("aria-valuemax")), "the tape does not run off its end");
  await page.keyboard.press("Home");
  assert.equal(await inches(), Number(await tape.getAttribute("aria-valuemin")));
});

journey("the carpenter's keys beside the phone's digits", {}, async ({ phone, page }) => {
  await phone.open();
  await line(page).tap();
  const keys = page.getByRole("group", { name: "Signs and fractions" });
  await page.keyboard.type("8");
  await keys.getByRole("button", { name: "Feet mark" }).tap();
  await keys.getByRole("button", { name: "Space" }).tap();
  await page.keyboard.type("2");
  assert.equal(await line(page).inputValue(), "8' 2");
  await keys.locator(".key", { hasText: "3/4" }).tap();
  assert.equal(await line(page).inputValue(), "8' 2-3/4\"");
  await keys.locator(".key", { hasText: "1/8" }).tap();
  assert.equal(await line(page).inputValue(), "8' 2-1/8\"", "another fraction takes the place of the first");
  await keys.getByRole("button", { name: "Whole inches" }).tap();
  assert.equal(await line(page).inputValue(), "8' 2\"");
  assert.ok(await line(page).evaluate((input) => input === document.activeElement), "the phone's keys stay up");
});

journey("a slip of the thumb keeps the last answer and says so", {}, async ({ phone, page }) => {
  await phone.open();
  await type(page, "8' 2-3/4");
  const good = await figure(page);
  await line(page).tap();
  await page.keyboard.type("8'z");
  assert.equal(await figure(page), good, "the last good answer stays");
  await page.getByText("not updated").waitFor();
  assert.match(await echo(page), /^8'z .+\.$/, "a sentence says what is wrong with what was given");
  assert.equal(await line(page).getAttribute("aria-invalid"), "true");
  await page.keyboard.press("Backspace");
  await page.getByText("not updated").waitFor({ state: "detached" });
  assert.equal(await line(page).getAttribute("aria-invalid"), "false");
});

journey("nothing moves under the thumb while a wrong text comes and goes", {}, async ({ phone, page }) => {
  await phone.open();
  await line(page).tap();
  await page.keyboard.type("8");
  const key = page.getByRole("button", { name: "Feet mark" });
  const place = await key.boundingBox();
  await page.keyboard.type("z");
  assert.deepEqual(await key.boundingBox(), place);
});

journey("the picture is the form's mirror", {}, async ({ phone, page }) => {
  await phone.open();
  await page.locator("line.pick[data-act=\"bring head_height\"]").tap({ force: true });
  await page.locator("#in-hand-label", { hasText: "Head height" }).waitFor();
  await page.locator(".dimension.in-hand").waitFor();
  await type(page, "7' 0");
  const alt = await page.locator(".picture svg").getAttribute("aria-label");
  assert.match(alt, /head at seven feet/, "the text alternative follows");
});

journey("another size is judged by one tap, and let go by another", {}, async ({ phone, page }) => {
  await phone.open();
  await type(page, "8'");
  const found = await figure(page);
  await page.locator(".size", { hasText: "2-2x6" }).first().tap();
  assert.equal(await figure(page), "2-2x6");
  assert.match(await verdict(page), /^too small/);
  await page.getByRole("button", { name: "Find the smallest instead" }).tap();
  assert.equal(await figure(page), found);
});

journey("an assumption is one tap from being said, and one step back undoes it", {}, async ({ phone, page }) => {
  await phone.open();
  const assumption = page.locator(".assumption", { hasText: "Building width" });
  await assumption.tap();
  assert.equal(await page.locator("#in-hand-label").innerText(), "Building width");
  await type(page, "36");
  await assumption.waitFor({ state: "detached" }); // what was said is assumed no longer
  await page.getByRole("button", { name: "Undo" }).tap();
  await assumption.waitFor();
});

journey("the working slides up, and Escape gives the focus back", {}, async ({ phone, page }) => {
  await phone.open();
  const key = page.getByRole("button", { name: "Working" });
  await key.focus();
  await page.keyboard.press("Enter");
  const sheet = page.locator("dialog[open]");
  await sheet.getByRole("heading", { name: "Working" }).waitFor();
  assert.ok((await sheet.locator(".working-step").count()) > 5);
  assert.ok((await sheet.locator(".clause", { hasText: "NDS" }).count()) > 0, "clauses stand in the margin");
  await page.keyboard.press("Escape");
  await sheet.waitFor({ state: "detached" });
  assert.ok(await key.evaluate((button) => button === document.activeElement));
  await key.tap();
  await page.goBack();
  await sheet.waitFor({ state: "detached" });
});
