// A walk through a large job, put straight into the browser's database as the app itself writes it.

/** Runs in the page: 5,000 looks at 50 marks and 300 photos, in the job that is there. */
export async function fill({ looks, marks, photos }) {
  const database = await new Promise((resolve, reject) => {
    const asked = indexedDB.open("galeframe");
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = reject;
  });
  const stores = ["parts", "walk_log", "photos", "thumbs"];
  const transaction = database.transaction(stores, "readwrite");
  const store = Object.fromEntries(stores.map((name) => [name, transaction.objectStore(name)]));
  const parts = await new Promise((resolve) => (store.parts.getAll().onsuccess = ({ target }) => resolve(target.result)));
  const job = JSON.parse(parts[0]).job;
  const at = "2026-05-04T10:42:00-05:00";
  let number = 0;
  const add = (id, body) => {
    number += 1;
    const record = { format: 1, id, job, walk: "a0", number, at, by: "A. Framer", body };
    store.walk_log.add(JSON.stringify(record), `${job}/${id}`);
  };
  add("a0", { begun: { name: "Walk 1" } });
  for (let mark = 0; mark < marks; mark += 1) {
    const fields = { drawing: "S2.1", stud_spacing: "16" };
    add(`b${mark}`, { mark: { mark: `m${mark}`, name: `W${mark + 1}`, fields } });
  }
  for (let look = 0; look < looks; look += 1) {
    const out = look % 9 === 0;
    add(`c${look}`, {
      look: {
        mark: `m${look % marks}`,
        place: `bay ${look}`,
        kind: "stud_spacing",
        texts: { drawing: "S2.1", required_spacing: "16" },
        lists: { pulls: ["16", "32", out ? "49" : "48", "64", "80", "96"] },
        verdict: out ? "out" : "within",
        says: out ? '17": too far apart. Stud spacing: 1" over 16".' : '16": within.',
        severity: "",
        note: "",
        follows: null,
      },
    });
  }
  const bytes = new Uint8Array(80_000);
  const small = new Uint8Array(6_000);
  for (let photo = 0; photo < photos; photo += 1) {
    const id = `d${photo}`;
    const shown = { of: `c${photo}`, photo: id, width: 1600, height: 1200, shows: "close", tape_in_view: true, caption: "" };
    add(`e${photo}`, { photo: shown });
    store.photos.put(bytes, id);
    store.thumbs.put(small, id);
  }
  await new Promise((resolve, reject) => {
    transaction.oncomplete = resolve;
    transaction.onabort = reject;
  });
  database.close();
}

/** Runs in the page: scrolls to its end by a screen a frame and gives the longest frame, milliseconds. */
export async function longestFrame() {
  const page = document.getElementById("page");
  const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
  let [longest, before] = [0, await frame()];
  while (page.scrollTop + page.clientHeight < page.scrollHeight - 2) {
    page.scrollBy(0, page.clientHeight / 4);
    const now = await frame();
    longest = Math.max(longest, now - before);
    before = now;
  }
  return longest;
}
