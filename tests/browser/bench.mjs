// Lab numbers: a slow phone on a slow network, each beside its budget. Run by `cargo xtask bench`.
//
// The network is 150 ms away and carries 1.6 Mbit/s; the processor is slowed to a quarter. "Usable" is when the app
// sets data-ready on the root element; "blocked" is what tasks take beyond 50 ms between the first paint and then. bench.taps.json lists what is tapped: a place, and a selector whose visible
// matches are tapped in turn.
import { readFile, rm, writeFile } from "node:fs/promises";
import { availableParallelism, loadavg } from "node:os";
import { join } from "node:path";
import { Phone, SITE_DIR, kept, ready, temporaryFolder, withCoreModule } from "./harness.mjs";
import { fill, longestFrame } from "./long_walk.mjs";
import { Site } from "./server.mjs";

const NETWORK = {
  offline: false,
  latency: 150,
  downloadThroughput: 1_600_000 / 8,
  uploadThroughput: 750_000 / 8,
  connectionType: "cellular3g",
};
const SLOWER = 4;
const TAPS = 200;
const RUNS = 3;
const PATIENCE = 30_000;

const BUDGETS = {
  "largest paint, ms": 1200,
  "blocked before usable, ms": 50,
  "layout shift": 0,
  "usable, ms": 2000,
  "usable again with no signal, ms": 300,
  [`slowest of ${TAPS} taps, ms`]: 50,
  "walk of 5,000 looks opens, ms": 1000,
  "longest frame while it scrolls, ms": 100,
  // 1.6 times what the command may take (crates/framing/examples/timing.rs).
  "header check in the browser, µs": 400,
};

/** Collects paints, shifts, long tasks and slow taps from the first moment of a page. */
function collect() {
  const seen = { paint: 0, shift: 0, first: undefined, tasks: [], taps: [], ready: undefined };
  globalThis.lab = seen;
  const observe = (type, take, more = {}) => {
    new PerformanceObserver((list) => list.getEntries().forEach(take)).observe({ type, buffered: true, ...more });
  };
  observe("paint", (entry) => entry.name === "first-contentful-paint" && (seen.first = entry.startTime));
  observe("largest-contentful-paint", (entry) => (seen.paint = entry.startTime));
  observe("layout-shift", (entry) => (seen.shift += entry.value));
  observe("longtask", (entry) => seen.tasks.push([entry.startTime, entry.duration]));
  observe("event", (entry) => entry.interactionId && seen.taps.push(entry.duration), { durationThreshold: 16 });
  const look = () => {
    if (document.documentElement?.dataset.ready === "true") {
      seen.ready ??= performance.now();
      globalThis.labReady?.("");
    } else requestAnimationFrame(look);
  };
  look();
}

/** Slows a page down and gives back what waits until it is usable. The page says so itself: to ask it would bring a
 * script of the test library's own into the page, and the phone would read that before it reads the app. */
async function slowDown(page, network) {
  const session = await page.context().newCDPSession(page);
  await session.send("Runtime.enable");
  await session.send("Runtime.addBinding", { name: "labReady" });
  const usable = new Promise((resolve) => session.once("Runtime.bindingCalled", resolve));
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  if (network) {
    await session.send("Network.enable");
    await session.send("Network.emulateNetworkConditions", NETWORK);
  }
  return () => Promise.race([usable, page.waitForTimeout(PATIENCE).then(() => Promise.reject(new Error(`${page.url()} is not usable`)))]);
}

async function measured(page, usable) {
  await usable();
  await page.waitForTimeout(1500); // a late shift or a longer task would still count
  const lab = await page.evaluate(() => globalThis.lab);
  const between = lab.tasks.filter(([start]) => start >= lab.first && start < lab.ready);
  return { ...lab, blocked: between.reduce((sum, [, duration]) => sum + Math.max(0, duration - 50), 0) };
}

async function firstVisit(site) {
  const phone = await Phone.start(site);
  await phone.page.addInitScript(collect);
  const usableThen = await slowDown(phone.page, true);
  await phone.page.goto(site.at(), { waitUntil: "commit" });
  const { paint, shift, ready: usable, blocked } = await measured(phone.page, usableThen);
  await phone.close();
  return {
    "largest paint, ms": paint,
    "blocked before usable, ms": blocked,
    "layout shift": shift,
    "usable, ms": usable,
  };
}

async function laterVisit(site) {
  const phone = await Phone.start(site);
  await phone.open();
  await kept(phone.page);
  await phone.page.reload();
  await ready(phone.page);
  await site.stop();
  const page = await phone.context.newPage();
  await page.addInitScript(collect);
  const usableThen = await slowDown(page, false);
  await page.goto(site.at(), { waitUntil: "commit" });
  const { ready: usable } = await measured(page, usableThen);
  await phone.close();
  await site.start();
  return { "usable again with no signal, ms": usable };
}

/** A large walk on a slow phone with no signal. */
async function longWalk(site) {
  const phone = await Phone.start(site);
  await phone.page.goto(site.at("#/inspection"));
  await phone.page.waitForURL(/inspection\//);
  await ready(phone.page);
  await kept(phone.page);
  await phone.page.evaluate(fill, { looks: 5000, marks: 50, photos: 300 });
  await phone.page.close();
  await site.stop();
  const page = await phone.context.newPage();
  await page.addInitScript(collect);
  const usableThen = await slowDown(page, false);
  await page.goto(site.at("inspection/#/inspection"), { waitUntil: "commit" });
  const { ready: usable } = await measured(page, usableThen);
  const frame = await page.evaluate(longestFrame);
  await phone.close();
  await site.start();
  return { "walk of 5,000 looks opens, ms": usable, "longest frame while it scrolls, ms": frame };
}

/** The core alone, at full speed: the middle of many openings, microseconds. */
async function checks(site) {
  const phone = await Phone.start(site);
  const often = () => {
    const { check_often: check } = globalThis.core;
    check(72, 3000);
    const times = [];
    for (let inches = 36; inches < 156; inches += 4) {
      const start = performance.now();
      const answered = check(inches, 200);
      times.push(((performance.now() - start) * 1000) / answered);
    }
    return times.sort((a, b) => a - b)[times.length >> 1];
  };
  const microseconds = await withCoreModule(phone, often);
  await phone.close();
  return { "header check in the browser, µs": microseconds };
}

async function taps(site) {
  const list = JSON.parse(await readFile(new URL("bench.taps.json", import.meta.url), "utf8"));
  const phone = await Phone.start(site);
  const { page } = phone;
  await page.addInitScript(collect);
  await slowDown(page, false);
  let slowest = 0;
  for (const { place, tap } of list) {
    await phone.open(place);
    await page.locator(tap).first().waitFor();
    for (let count = 0; count < TAPS / list.length; count += 1) {
      const targets = await page.locator(tap).all();
      if (targets.length === 0) throw new Error(`bench.taps.json: nothing matches ${tap} at "${place}"`);
      await targets[count % targets.length].tap();
    }
    await page.waitForTimeout(500);
    slowest = Math.max(slowest, ...(await page.evaluate(() => globalThis.lab.taps)));
  }
  await phone.close();
  return { [`slowest of ${TAPS} taps, ms`]: slowest };
}

const EMPTY_PAGE = `<!doctype html><html data-ready="true"><title>Empty</title><link rel="icon" href="data:,">
<button style="width:200px;height:200px">0</button>
<script>document.querySelector("button").onclick = ({ target }) => (target.textContent += "0")</script></html>`;

/** What the lab itself takes: a page with one button. No app can be quicker here. */
async function emptyPage() {
  const folder = await temporaryFolder();
  await writeFile(join(folder, "index.html"), EMPTY_PAGE);
  const site = await new Site(folder).start();
  const phone = await Phone.start(site);
  await phone.page.addInitScript(collect);
  const usableThen = await slowDown(phone.page, false);
  await phone.page.goto(site.at(), { waitUntil: "commit" });
  const { ready: there } = await measured(phone.page, usableThen);
  for (let count = 0; count < 20; count += 1) await phone.page.locator("button").tap();
  await phone.page.waitForTimeout(500);
  const tap = Math.max(0, ...(await phone.page.evaluate(() => globalThis.lab.taps)));
  await phone.close();
  await site.stop();
  await rm(folder, { recursive: true, force: true });
  return { there, tap };
}

/** The middle one of several runs: one hiccup of the machine is not the app's. */
async function middle(measure) {
  const runs = [];
  for (let run = 0; run < RUNS; run += 1) runs.push(await measure());
  const of = (name) => runs.map((run) => run[name]).sort((a, b) => a - b)[Math.floor(RUNS / 2)];
  return Object.fromEntries(Object.keys(runs[0]).map((name) => [name, of(name)]));
}

if (loadavg()[0] > availableParallelism() / 2) {
  console.log(`   this machine is busy (load ${loadavg()[0].toFixed(1)}): the numbers will be too high`);
}
const site = await new Site(SITE_DIR).start();
const numbers = {
  ...(await middle(() => firstVisit(site))),
  ...(await middle(() => laterVisit(site))),
  ...(await middle(() => longWalk(site))),
  ...(await taps(site)),
  ...(await checks(site)),
};
await site.stop();
const empty = await emptyPage();
console.log(`   an empty page here is there in ${Math.round(empty.there)} ms, and its slowest tap takes ${empty.tap} ms`);

let over = 0;
for (const [name, budget] of Object.entries(BUDGETS)) {
  const within = numbers[name] <= budget;
  over += within ? 0 : 1;
  const value = name === "layout shift" ? numbers[name].toFixed(3) : Math.round(numbers[name]);
  console.log(`   ${name.padEnd(34)} ${String(value).padStart(7)} of ${budget}${within ? "" : "   over budget"}`);
}
process.exit(over === 0 ? 0 : 1);
