// The phone and the command give the same digits: 200 random headers, 200 random other members, 200 random walls and 200
// random roofs answered by the core in the browser, built as the app's is, and by the command on this machine, compared byte for byte.
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

/** What picks and measures by a generator. */
function dice(seed) {
  const next = random(seed);
  const pick = (list) => list[Math.floor(next() * list.length)];
  const number = (low, high, places = 0) => (low + next() * (high - low)).toFixed(places);
  return { pick, number };
}

function members() {
  const { pick, number } = dice(20251128);
  const length = (low, high) => `${number(low, high)}' ${number(0, 11)}-${pick([1, 3, 5, 7])}/8"`;
  const wood = () => ({
    species: pick(["SPF", "SPF-S", "HF", "DF-L", "SP"]),
    grade: pick(["Select Structural", "No. 1", "No. 2"]),
    service: pick(["dry", "dry", "wet"]),
  });
  const place = () => ({
    roof_pitch: pick(["3/12", "5/12", "8/12", "12/12"]),
    ground_snow: `${number(0, 70, 1)} psf`,
    wind_speed: `${number(90, 170, 1)} mph`,
    exposure: pick(["B", "C", "D"]),
  });
  const kinds = [
    () => ({ check: "joist", joist_span: length(6, 18), cantilever: pick([undefined, "18\""]), floor_live: `${number(30, 60, 1)} psf` }),
    () => ({ check: "beam", beam_spans: `${length(5, 14)}, ${length(5, 14)}`, floor_strip: length(4, 14), more_loads: `L ${number(100, 900)} lb at 3'` }),
    () => ({ check: "rafter", rafter_run: length(6, 18), ties: pick(["plate", "ridge"]), ...place() }),
    () => ({ check: "ridge", ridge_spans: length(6, 18), ...place() }),
    () => ({ check: "hip_valley", hip_run: length(6, 18), corner: pick(["hip", "valley"]), ...place() }),
    () => ({ check: "stud", stud_length: length(8, 14), wind_speed: `${number(90, 170, 1)} mph` }),
    () => ({ check: "post", post_height: length(7, 14), post_dead: `${number(500, 4000)} lb` }),
    () => ({ check: "notch", joist_span: length(8, 16), cut_kind: "hole", cut_depth: `${number(1, 3)}"`, cut_at: "4'" }),
  ];
  return Array.from({ length: CASES }, (_, index) => ({ ...kinds[index % kinds.length](), ...wood() }));
}

function walls() {
  const { pick, number } = dice(20251130);
  const length = (low, high) => `${number(low, high)}' ${number(0, 11)}-${pick([1, 3, 5, 7])}/8"`;
  const wall = () => ({
    wall_pieces: `${length(2, 6)}, ${length(2, 9)}`,
    wall_push: `${number(400, 6000, 1)} lb`,
    wall_high: length(8, 12),
    drawn_size: pick([undefined, "7/16 8d 4", "15/32 10d 3 both faces", "15/32 structural i 8d 6"]),
    species: pick(["SPF", "HF", "DF-L", "SP"]),
    provisions: pick(["2015", "2021"]),
  });
  const kinds = [
    () => ({ check: "shear_wall", ...wall() }),
    () => ({ check: "perforated_wall", ...wall(), wall_openings: `${length(2, 6)} x ${length(3, 6)}` }),
    () => ({
      check: "drawn_and_worked",
      schedule_lines: `P1: ${pick(["7/16 8d 4", "15/32 10d 3"])}, hold-down HD1\nHD1: hold-down ${number(1000, 9000)} lb`,
      braced_walls: `A: P1, walls 4', 6', high 8', push ${number(300, 2000)}\nB: P1, walls 4', 6', high 9', push ${number(2000, 6000)}, dead ${number(0, 200)}, under A`,
      species: pick(["SPF", "HF", "DF-L", "SP"]),
    }),
    () => ({ check: "hold_down", storey_pushes: `${number(200, 2000)}, ${number(200, 2000)}`, wall_long: length(3, 12) }),
    () => ({ check: "uplift", wind_speed: `${number(100, 170, 1)} mph`, exposure: pick(["B", "C", "D"]), rafter_tie: "3 8d common" }),
    () => ({ check: "diaphragm", floor_span: length(20, 50), floor_deep: length(18, 30), species: pick(["SPF", "DF-L"]) }),
    () => ({ check: "wall_lines", wind_speed: `${number(100, 170, 1)} mph`, exposure: pick(["B", "C"]) }),
    () => ({ check: "anchor_bolts", bolt_thick: pick(["1/2", "5/8"]), species: pick(["SPF", "HF", "DF-L", "SP"]) }),
    () => ({ check: "nail", nail_as: pick(["8d common", "0.131 x 3-1/4", "16d box"]), nail_driven: pick([undefined, "toe"]), nail_across: `${number(20, 200)} lb` }),
    () => ({ check: "nail_swap", asked_nail: pick(["16d common", "10d common"]), found_nail_as: "0.131 x 3", nail_pattern: `${number(4, 12)} nails` }),
    () => ({ check: "wall_layers", wall_layers: `panel 7/16, barrier, foam ${pick([1, 2])}, furring 3/4, cladding ${pick(["1/2", "3/8"])}` }),
  ];
  return Array.from({ length: CASES }, (_, index) => kinds[index % kinds.length]());
}

function roofs() {
  const { pick, number } = dice(20251201);
  const length = (low, high) => `${number(low, high)}' ${number(0, 11)}-${pick([1, 3, 5, 7])}/8"`;
  const pitch = () => pick(["3/12", "4.5/12", "6/12", "8/12", "9.75/12"]);
  const roof = () => ({
    roof_pitch: pitch(),
    cut_run: pick([undefined, length(6, 20)]),
    eave_overhang: `${number(2, 30, 2)}"`,
    cut_stick: pick(["2x8", "2x10", "2x12"]),
    seat_level: pick(['1-1/2"', '2-1/4"', '3-1/2"']),
  });
  const corner = () => ({
    cut_corner: pick(["hip", "valley"]),
    cut_other_pitch: pick([undefined, pitch()]),
    corner_angle: pick(["90", "90", "82.5", "105"]),
    hip_stick: pick(["2x10", "2x12"]),
    hip_plies: pick(["1", "2"]),
  });
  const kinds = [
    () => ({ check: "common_rafter", ...roof(), ridge_meets: pick(["board", "beam_face", "rafter"]), tail_cut: pick(["plumb", "square"]) }),
    () => ({ check: "hip_valley_cuts", ...roof(), ...corner(), hip_top: pick(["square", "slid", "backed"]), hip_meets: pick(["ridge", "commons", "lines"]) }),
    () => ({ check: "jack", ...roof(), ...corner(), jack_side: pick(["a", "b"]), jack_every: pick(['16"', '24"']), jack_start: pick(["corner", "king"]) }),
    () => ({ check: "roof_sheathing", roof_pitch: pitch(), cut_other_pitch: pitch(), cut_run: length(6, 20), sheathed_eave: length(20, 60), left_end: pick(["gable", "hip", "valley"]), right_end: pick(["gable", "hip", "valley"]) }),
  ];
  return Array.from({ length: CASES }, (_, index) => kinds[index % kinds.length]());
}

function headers() {
  const { pick, number } = dice(20250117);
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
  }));
}

const cases = () => [...headers(), ...members(), ...walls(), ...roofs()].map((one) => JSON.stringify(one));

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
  assert.equal(native.length, lines.length);
  const answered = native.filter((line) => /^\{"check":"\w+","(size|verdict|[a-z_]+)":/.test(line) && line.includes('"ratio":')).length;
  assert.ok(answered > lines.length * 0.8, `only ${answered} of ${lines.length} lines were answered`);
  for (const [at, line] of lines.entries()) assert.equal(inBrowser[at], native[at], line);
});
