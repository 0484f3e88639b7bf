// The page works without this module, by links and forms. With it a change is taken at once, what moved is marked, and a
// rung and its place in the drawing answer each other. It works nothing out: every number comes from the server.

const parts = ["drawings", "ladder", "drafting", "seats", "part", "numbers"];
const calm = 6000; // how long a moved rung stays marked (ms)
let chosen = null;
let running = 0;

document.documentElement.classList.add("live");

function sheet() {
  return document.getElementById("sheet");
}

function each(root, selector, does) {
  root.querySelectorAll(selector).forEach(does);
}

// ---- pointing ----

function named(attribute, value) {
  return document.querySelectorAll(`[${attribute}="${CSS.escape(value)}"]`);
}

function clear() {
  each(document, ".drawing .sel", (e) => e.classList.remove("sel"));
  each(document, ".on", (e) => e.classList.remove("on"));
}

function pointAtRung(rung) {
  clear();
  if (!rung) return;
  rung.classList.add("on");
  each(document, ".drawing [data-finding]", (e) => {
    if (e.dataset.finding === rung.dataset.finding) e.classList.add("sel");
  });
  for (const seat of rung.dataset.seats.split("|")) {
    if (seat) named("data-seat", seat).forEach((e) => e.classList.add(e.closest(".drawing") ? "sel" : "on"));
  }
}

function pointAtSeat(seat) {
  clear();
  named("data-seat", seat).forEach((e) => e.classList.add(e.closest(".drawing") ? "sel" : "on"));
  each(document, ".rung", (rung) => {
    if (rung.dataset.seats.split("|").includes(seat)) rung.classList.add("on");
  });
}

function pointAtChosen() {
  pointAtRung([...document.querySelectorAll(".rung")].find((r) => r.dataset.finding === chosen));
}

function point(target) {
  const rung = target.closest?.(".rung");
  const seat = target.closest?.("[data-seat]");
  const dimension = target.closest?.(".drawing [data-finding]");
  if (rung) pointAtRung(rung);
  else if (dimension?.dataset.finding) {
    pointAtRung([...document.querySelectorAll(".rung")].find((r) => r.dataset.finding === dimension.dataset.finding));
  } else if (seat) pointAtSeat(seat.dataset.seat);
  else pointAtChosen();
}

// ---- changing ----

// Whatever stands on the page now, by the name of its finding or number.
function readings() {
  const now = new Map();
  each(document, ".rung", (e) => now.set("r:" + e.dataset.finding, e.dataset.says));
  each(document, "[data-number]", (e) => now.set("n:" + e.dataset.number, e.textContent));
  return now;
}

function markMoved(before) {
  const moved = [];
  each(document, ".rung", (e) => {
    const was = before.get("r:" + e.dataset.finding);
    if (was !== undefined && was !== e.dataset.says) {
      e.querySelector(".was").textContent = "was: " + was;
      e.classList.add("moved");
      moved.push(e);
    }
  });
  each(document, "[data-number]", (e) => {
    const was = before.get("n:" + e.dataset.number);
    if (was !== undefined && was !== e.textContent) {
      e.classList.add("moved");
      moved.push(e);
    }
  });
  setTimeout(() => moved.forEach((e) => e.classList.remove("moved")), calm);
}

// What is typed but not yet sent survives a page that arrives meanwhile.
function typed(sent) {
  const kept = new Map();
  each(document, "form[data-field] input[name=value]", (i) => {
    if (i.value !== i.defaultValue && i.form.dataset.field !== sent) kept.set(i.id, i.value);
  });
  return kept;
}

function replace(next, ids, sent) {
  const kept = typed(sent);
  const opened = [...document.querySelectorAll(".rung details[open]")].map((d) => d.closest(".rung").dataset.finding);
  const folds = [...document.querySelectorAll(".more")].map((d) => d.open);
  const readTo = document.getElementById("ladder").scrollTop;
  for (const id of ids) {
    const fresh = next.getElementById(id);
    if (fresh) document.getElementById(id).replaceWith(document.adoptNode(fresh));
  }
  each(document, ".rung", (r) => {
    if (opened.includes(r.dataset.finding)) r.querySelector("details").open = true;
  });
  kept.forEach((value, id) => {
    const input = document.getElementById(id);
    if (input) input.value = value;
  });
  document.querySelectorAll(".more").forEach((d, i) => { d.open = folds[i] ?? false; });
  document.getElementById("ladder").scrollTop = readTo;
}

async function go(address, push, sent) {
  const turn = ++running;
  const before = readings();
  document.body.classList.add("busy");
  try {
    const response = await fetch(address, { headers: { Accept: "text/html", "X-Bench": "brief" } });
    const next = new DOMParser().parseFromString(await response.text(), "text/html");
    if (turn !== running) return;
    if (!next.getElementById("sheet")) {
      location.assign(address);
      return;
    }
    const focused = document.activeElement?.id; // as it is when the page arrives, not when it was asked for
    if (response.status === 422) {
      replace(next, ["lead", "part", "drafting"], sent);
    } else {
      replace(next, [...parts, "strip", "top"], sent);
      document.title = next.title;
      if (push) history.pushState(null, "", response.url);
      chosen = next.getElementById("sheet")?.dataset.chosen ?? chosen;
      markMoved(before);
    }
    if (focused) document.getElementById(focused)?.focus({ preventScroll: true });
    pointAtChosen();
    performance.mark("beltwright-shown");
  } catch {
    location.assign(address); // without an answer the browser says what is wrong better than we could
  } finally {
    if (turn === running) document.body.classList.remove("busy");
  }
}

function addressOf(form) {
  return form.action + "?" + new URLSearchParams(new FormData(form));
}

document.addEventListener("submit", (event) => {
  const form = event.target;
  if (form.method !== "get") return;
  event.preventDefault();
  go(addressOf(form), true, form.dataset.field);
});

document.addEventListener("change", (event) => {
  const form = event.target.closest("form[data-field]");
  if (form) go(addressOf(form), true, form.dataset.field);
});

document.addEventListener("click", (event) => {
  const link = event.target.closest("a[href]");
  const here = link && new URL(link.href);
  if (link && here.origin === location.origin && here.pathname === location.pathname && !here.hash
      && !event.ctrlKey && !event.metaKey && !event.shiftKey) {
    event.preventDefault();
    go(link.href, true);
    return;
  }
  const part = event.target.closest(".drawing [data-seat]");
  if (part) {
    const cell = [...document.querySelectorAll(".seat")].find((s) => s.dataset.seat === part.dataset.seat);
    const open = cell?.querySelector(".name");
    if (open) go(open.href, true);
  }
});

addEventListener("popstate", () => go(location.href, false));

// After a change workings come one by one, when they are opened.
async function fill(opened) {
  const response = await fetch(opened.dataset.fetch, { headers: { Accept: "text/html", "X-Bench": "part" } });
  const next = new DOMParser().parseFromString(await response.text(), "text/html");
  const reading = opened.contains(document.activeElement);
  opened.replaceChildren(...next.body.childNodes);
  delete opened.dataset.fetch;
  if (reading) {
    opened.tabIndex = -1;
    opened.focus({ preventScroll: true });
  }
}

document.addEventListener("toggle", (event) => {
  if (event.target.open) each(event.target, ":scope > .opened[data-fetch]", fill);
  const rung = event.target.closest?.(".rung");
  if (rung && event.target.open) {
    chosen = rung.dataset.finding;
    pointAtRung(rung);
  }
}, true);

document.addEventListener("pointerover", (event) => point(event.target));
document.addEventListener("focusin", (event) => point(event.target));

chosen = sheet().dataset.chosen;
pointAtChosen();
performance.mark("beltwright-ready");
