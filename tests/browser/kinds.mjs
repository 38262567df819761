// The kinds of quick checks, as their pages name them.
export const MEMBERS = ["Joist", "Beam", "Rafter", "Ridge", "Hip, valley", "Stud", "Post", "Notch, hole", "Span table"];
export const BRACING = ["Shear wall", "Wall with openings", "Hold-downs", "Path of uplift", "Wall layers", "Schedule", "Drawn and worked", "Anchor bolts", "Wall lines", "Floor or roof", "Nail", "Nail swap"];
export const LAYOUT = ["Common rafter", "Hip, valley", "Jack rafters", "Roof sheathing", "Wall layout", "Floor layout", "Ceiling strapping"];

/** Looks at another kind. */
export async function lookAt(page, kind) {
  await page.locator("details.kinds summary").tap();
  await page.locator(".kind").getByText(kind, { exact: true }).tap();
  await page.getByRole("heading", { level: 1, name: kind, exact: true }).waitFor({ state: "attached" });
}
