// Draws the PNG icons in public/ from the SVG ones. Run after changing those: node tests/browser/draw-icons.mjs
//
// The drawing has four colours and their blends. Written with a palette of them a PNG is a third of what a browser's
// own screenshot weighs, and every phone fetches these.
import { readFile, writeFile } from "node:fs/promises";
import { crc32, deflateSync } from "node:zlib";
import { chromium } from "playwright-core";

const ICONS = [
  ["icon.svg", "icon-192.png", 192],
  ["icon.svg", "icon-512.png", 512],
  ["icon-maskable.svg", "icon-maskable-192.png", 192],
  ["icon-maskable.svg", "icon-maskable-512.png", 512],
  ["icon-maskable.svg", "icon-180.png", 180],
];

/** The pixels of a drawing, four bytes each, as the browser draws it. */
async function pixels(page, drawing, size) {
  return page.evaluate(
    async ([drawing, size]) => {
      const picture = new Image(size, size);
      picture.src = `data:image/svg+xml,${encodeURIComponent(drawing)}`;
      await picture.decode();
      const canvas = new OffscreenCanvas(size, size).getContext("2d");
      canvas.drawImage(picture, 0, 0, size, size);
      return [...canvas.getImageData(0, 0, size, size).data];
    },
    [drawing, size],
  );
}

/** Blends to the nearest of sixteen steps a channel; the four flat colours stay as they are. */
const FLAT = [[0xfa, 0xf8, 0xf2], [0x15, 0x18, 0x1b], [0xf1, 0xe4, 0xc6], [0x17, 0x3a, 0x86]];
function settled([red, green, blue, alpha]) {
  const near = FLAT.find((flat) => flat.every((level, at) => Math.abs(level - [red, green, blue][at]) < 3));
  const step = (level) => Math.round(level / 17) * 17;
  if (alpha === 0) return [0, 0, 0, 0];
  return [...(near ?? [red, green, blue].map(step)), step(alpha)];
}

function png(data, size) {
  const palette = new Map();
  const rows = Buffer.alloc((size + 1) * size);
  for (let at = 0; at < size * size; at += 1) {
    const colour = settled(data.slice(at * 4, at * 4 + 4));
    const key = colour.join();
    if (!palette.has(key)) palette.set(key, { index: palette.size, colour });
    // Each row begins with the number of its filter: 0, none.
    rows[at + Math.floor(at / size) + 1] = palette.get(key).index;
  }
  if (palette.size > 256) throw new Error(`${palette.size} colours do not fit a palette`);
  const colours = [...palette.values()].map(({ colour }) => colour);
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  head.set([8, 3, 0, 0, 0], 8); // eight bits, palette
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("PLTE", Buffer.from(colours.flatMap((colour) => colour.slice(0, 3)))),
    chunk("tRNS", Buffer.from(colours.map((colour) => colour[3]))),
    chunk("IDAT", deflateSync(rows, { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(name, data) {
  const body = Buffer.concat([Buffer.from(name), data]);
  const whole = Buffer.alloc(body.length + 8);
  whole.writeUInt32BE(data.length, 0);
  body.copy(whole, 4);
  whole.writeUInt32BE(crc32(body), body.length + 4);
  return whole;
}

const folder = new URL("../../public/", import.meta.url);
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? "chromium", args: ["--no-sandbox"] });
const page = await browser.newPage();
for (const [source, target, size] of ICONS) {
  const drawing = await readFile(new URL(source, folder), "utf8");
  await writeFile(new URL(target, folder), png(await pixels(page, drawing, size), size));
}
await browser.close();
