// Serves a built site to the journeys, with the headers that package/HEADERS.md asks for. It can be stopped in the
// middle of anything and started again on the same port.
import { createServer } from "node:http";
import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { extname, join, normalize } from "node:path";

const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".md": "text/plain; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

const ALWAYS_SENT = {
  "Content-Security-Policy": "frame-ancestors 'none'",
  "X-Frame-Options": "DENY",
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Opener-Policy": "same-origin",
};

const HASHED = /-[0-9a-f]{16}[._][^/]*$/;

export class Site {
  #server;
  #port = 0;

  /** `hold(path)` may return a promise: the answer waits for it. */
  constructor(folder, { base = "/", hold = () => undefined } = {}) {
    this.folder = folder;
    this.base = base;
    this.hold = hold;
  }

  get origin() {
    return `http://localhost:${this.#port}`;
  }

  /** The full address of a place in the app, such as `members/header`. */
  at(place = "") {
    return this.origin + this.base + place;
  }

  async start() {
    this.#server = createServer((request, response) => this.#answer(request, response));
    await new Promise((resolve, reject) => {
      this.#server.once("error", reject);
      this.#server.listen(this.#port, "127.0.0.1", resolve);
    });
    this.#port = this.#server.address().port;
    return this;
  }

  /** Cuts every connection: what a phone meets when it drives out of reach. */
  async stop() {
    const closed = new Promise((resolve) => this.#server.close(resolve));
    this.#server.closeAllConnections();
    await closed;
  }

  async #answer(request, response) {
    const path = decodeURIComponent(new URL(request.url, this.origin).pathname);
    await this.hold(path);
    const inside = path.startsWith(this.base) ? normalize(path.slice(this.base.length)) : undefined;
    if (inside === undefined || inside.startsWith("..")) return send(response, 404, {}, "outside of the site");
    const name = extname(inside) ? inside : await this.#page(inside);
    const found = await this.#bestCopy(name, request.headers["accept-encoding"] ?? "");
    if (!found) return send(response, 404, {}, "no such file");
    const tag = `"${createHash("sha256").update(found.body).digest("base64")}"`;
    const headers = {
      "Content-Type": TYPES[extname(name)] ?? "application/octet-stream",
      "Cache-Control": HASHED.test(name) ? "public, max-age=31536000, immutable" : "no-cache",
      Vary: "Accept-Encoding",
      ETag: tag,
      ...found.headers,
    };
    if (request.headers["if-none-match"] === tag) return send(response, 304, headers);
    send(response, 200, headers, found.body);
  }

  /** The page of a folder, or the first page: a place in the app. */
  async #page(inside) {
    const own = join(inside, "index.html");
    return (await readFile(join(this.folder, own)).catch(() => undefined)) ? own : "index.html";
  }

  async #bestCopy(name, encodings) {
    const path = join(this.folder, name);
    const compressed = /\bbr\b/.test(encodings) ? await readFile(`${path}.br`).catch(() => undefined) : undefined;
    if (compressed) return { body: compressed, headers: { "Content-Encoding": "br" } };
    const body = await readFile(path).catch(() => undefined);
    return body && { body, headers: {} };
  }
}

function send(response, status, headers, body) {
  response.writeHead(status, { ...ALWAYS_SENT, ...headers });
  response.end(body);
}
