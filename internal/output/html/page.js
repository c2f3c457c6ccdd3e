"use strict";
(() => {
  const form = document.getElementById("filter");
  const all = Array.from(document.querySelectorAll(".row .finding"));
  if (all.length > 0) form.hidden = false;
  const field = (name) => form.elements.namedItem(name);
  const wanted = (name) => field(name).value;

  const fits = (f, words) =>
    ["topic", "severity", "sheet"].every((k) => wanted(k) === "" || f.dataset[k] === wanted(k)) &&
    words.every((w) => f.dataset.words.includes(w));

  const hideEmpty = (selector, inner) => {
    for (const box of document.querySelectorAll(selector)) {
      box.hidden = !box.querySelector(inner + ":not([hidden])");
    }
  };

  const filter = () => {
    const words = wanted("words").toLowerCase().split(/\s+/).filter(Boolean);
    for (const f of all) f.hidden = !fits(f, words);
    hideEmpty(".row", ".finding");
    hideEmpty(".sheet", ".row");
    for (const note of document.querySelectorAll(".nothing")) {
      note.hidden = note.closest(".file").querySelector(".sheet:not([hidden])") !== null;
    }
    const shown = all.filter((f) => !f.hidden).length;
    field("shown").value = shown + " of " + all.length + " findings";
  };

  const step = (by) => {
    const shown = all.filter((f) => !f.hidden);
    if (shown.length === 0) return;
    const here = shown.indexOf(document.activeElement.closest(".finding") || last);
    last = shown[(here + by + shown.length) % shown.length];
    if (here < 0) last = shown[by > 0 ? 0 : shown.length - 1];
    last.focus({ preventScroll: true });
    last.scrollIntoView({ block: "center" });
  };
  let last = null;

  form.addEventListener("input", filter);
  form.addEventListener("submit", (e) => e.preventDefault());
  form.addEventListener("reset", () => setTimeout(filter));
  form.addEventListener("keydown", (e) => {
    if (e.key === "Escape") form.reset();
  });
  field("previous").addEventListener("click", () => step(-1));
  field("next").addEventListener("click", () => step(1));

  // A link to a finding that is filtered away shows all again.
  const show = () => {
    const target = location.hash && document.getElementById(location.hash.slice(1));
    if (target && target.closest("[hidden]")) form.reset();
  };
  addEventListener("hashchange", show);

  let opened = [];
  addEventListener("beforeprint", () => {
    opened = Array.from(document.querySelectorAll("details:not([open])"));
    for (const d of opened) d.open = true;
  });
  addEventListener("afterprint", () => {
    for (const d of opened) d.open = false;
  });
  filter();
})();
