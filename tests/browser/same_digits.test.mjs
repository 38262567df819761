// The phone and the command give the same digits: 200 random headers answered by the core in the browser, built as the
// app's is, and by the command on this machine, compared byte for byte.
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { journey, withCoreModule } from "./harness.mjs";

const CASES = 200;

// A small generator of its own, seeded, so that a failure can be run again.
function random(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function cases() {
  const next = random(20250117);
  const pick = (list) => list[Math.floor(next() * list.length)];
  const number = (low, high, places = 0) => (low + next() * (high - low)).toFixed(places);
  return Array.from({ length: CASES }, () => ({
    check: "header",
    opening_width: pick([`${number(1, 23)}' ${number(0, 11)}-${pick([1, 3, 5, 7])}/8"`, `${number(305, 7000)} mm`]),
    carries: pick([
      "roof_ceiling",
      "one_floor_center_bearing",
      "one_floor_clear_span",
      "two_floors_center_bearing",
      "two_floors_clear_span",
      "floor_only",
      "interior_one_floor",
      "interior_two_floors",
      "gable_end",
    ]),
    above: pick(["framing_bears", "cripple_studs", undefined]),
    closure: pick(["framed_unit", "overhead_door"]),
    building_width: `${number(12, 60, 2)}'`,
    overhang: `${number(0, 40, 1)}"`,
    wall_height: `${number(9, 20, 1)}'`,
    wall_studs: pick(["2x4", "2x6"]),
    stud_spacing: pick(['12"', '16"', '19.2"', '24"']),
    species: pick(["SPF", "SPF-S", "HF", "DF-L", "SP"]),
    grade: pick(["Select Structural", "No. 1", "No. 2", "No. 3"]),
    service: pick(["dry", "dry", "wet"]),
    incised: pick(["no", "no", "yes"]),
    ground_snow: `${number(0, 120, 1)} psf`,
    wind_speed: `${number(85, 200, 1)} mph`,
    exposure: pick(["B", "C", "D"]),
    near_corner: pick(["yes", "no"]),
    mean_roof_height: `${number(8, 60, 1)}'`,
    floor_live: pick(["30 psf", "40 psf", "50 psf"]),
    attic_live: pick(["10 psf", "20 psf"]),
    edition: pick(["2021", "2018", "2012"]),
    gap_at_jack: pick([undefined, '3/16"']),
  })).map((one) => JSON.stringify(one));
}

function byCommand(lines) {
  const run = spawnSync("cargo", ["run", "--quiet", "--package", "framing", "--", "check"], {
    input: lines.join("\n") + "\n",
    encoding: "utf8",
    maxBuffer: 2 ** 28,
  });
  assert.equal(run.error, undefined);
  return run.stdout.trimEnd().split("\n");
}

journey("the phone and the command give the same digits", {}, async ({ phone }) => {
  const lines = cases();
  const inBrowser = await withCoreModule(phone, (all) => all.map((line) => globalThis.core.check_line(line)), lines);
  const native = byCommand(lines);
  assert.equal(native.length, CASES);
  const answered = native.filter((line) => line.startsWith('{"check":"header"')).length;
  assert.ok(answered > CASES * 0.8, `only ${answered} of ${CASES} lines were answered`);
  for (const [at, line] of lines.entries()) assert.equal(inBrowser[at], native[at], line);
});
