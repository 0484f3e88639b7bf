// Pages of parts and pairs work without this module, by links and forms. With it the figure answers the field that is
// being typed, fields that do not apply step aside, a cell opens beside its matrix, and a large matrix fills as it is
// worked out. It works nothing out: every number comes from the server.

document.documentElement.classList.add("live");

// ---- entering a part ----

const entry = document.getElementById("entry");

function value(path) {
  return entry.elements[path]?.value ?? "";
}

function applies(when) {
  if (!when) return true;
  const equals = when.indexOf("=");
  if (equals > 0) return when.slice(equals + 1).split("|").includes(value(when.slice(0, equals)));
  const [path, above] = when.split(">");
  return parseFloat(value(path).replace(",", ".")) > Number(above);
}

function stepAside() {
  entry.querySelectorAll(".asked[data-when]").forEach((e) => {
    let on = applies(e.dataset.when);
    const other = e.dataset.when.split(/[=>]/)[0];
    const parent = entry.querySelector(`.asked[data-path="${CSS.escape(other)}"]`);
    if (on && parent?.hidden) on = false;
    e.hidden = !on;
    e.querySelectorAll("input, select").forEach((i) => { i.disabled = !on; });
  });
  showLetters();
}

// An address that names a field in a fold opens the fold.
function openAsked() {
  const field = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  const fold = field?.closest("details");
  if (fold) fold.open = true;
  field?.focus();
  field?.scrollIntoView({ block: "center" });
}

// The figure shows the letters of the fields that are asked now; those of a fold come with it.
function showLetters() {
  document.querySelectorAll(".measure [data-field]").forEach((g) => {
    const field = document.getElementById("p-" + g.dataset.field);
    g.classList.toggle("folded", Boolean(field?.disabled || field?.closest("details:not([open])")));
  });
}

function pointAt(path) {
  document.querySelectorAll(".measure [data-field]").forEach((g) => g.classList.toggle("sel", g.dataset.field === path));
}

if (entry) {
  stepAside();
  entry.addEventListener("input", stepAside);
  entry.addEventListener("change", stepAside);
  entry.addEventListener("focusin", (event) => pointAt(event.target.closest(".asked")?.dataset.path));
  document.querySelectorAll(".measure [data-field]").forEach((g) => g.addEventListener("click", () => {
    const field = document.getElementById("p-" + g.dataset.field);
    const fold = field?.closest("details");
    if (fold) fold.open = true;
    field?.focus();
  }));
  entry.querySelectorAll("details").forEach((fold) => fold.addEventListener("toggle", showLetters));
  if (location.hash) openAsked();
  entry.querySelector("[aria-invalid]")?.focus();
}

// ---- opening a cell ----

const why = document.getElementById("why");

document.addEventListener("click", async (event) => {
  const link = event.target.closest("a[data-why]");
  if (!link || !why || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  document.querySelectorAll("td.open").forEach((td) => td.classList.remove("open"));
  link.closest("td").classList.add("open");
  const response = await fetch(link.href, { headers: { Accept: "text/html" } });
  const page = new DOMParser().parseFromString(await response.text(), "text/html");
  const reason = page.getElementById("reason") ?? page.querySelector("main");
  why.replaceChildren(document.adoptNode(reason));
  why.focus({ preventScroll: false });
});

// ---- a large matrix ----

const progress = document.getElementById("progress");

async function stream() {
  const cells = new Map();
  document.querySelectorAll("td[data-row]").forEach((td) => cells.set(td.dataset.row + "\u0000" + td.dataset.column, td));
  const bar = document.getElementById("bar");
  const response = await fetch(progress.dataset.stream);
  const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
  const counts = new Map();
  let rest = "";
  let done = 0;
  for (;;) {
    const { value: piece, done: end } = await reader.read();
    if (end) break;
    const lines = (rest + piece).split("\n");
    rest = lines.pop();
    for (const line of lines) {
      const pair = JSON.parse(line);
      fillCell(cells.get(pair.row + "\u0000" + pair.column), pair);
      counts.set(pair.verdict, (counts.get(pair.verdict) ?? 0) + 1);
      done++;
    }
    bar.value = done;
    progress.textContent = `${done} of ${progress.dataset.all} pairs`;
  }
  bar.remove();
  progress.textContent = ["fails", "cannot tell", "marginal", "holds"].map((v) => `${counts.get(v) ?? 0} ${v}`).join(" · ");
}

function fillCell(td, pair) {
  if (!td) return;
  if (!pair.verdict) {
    td.textContent = "–";
    return;
  }
  td.className = pair.verdict.replace(" ", "-");
  const link = document.createElement("a");
  link.href = progress.dataset.stream.replace("/stream", "/why")
    + "&row=" + encodeURIComponent(pair.row) + "&column=" + encodeURIComponent(pair.column);
  link.dataset.why = "";
  const word = document.createElement("b");
  word.textContent = pair.verdict;
  const slack = document.createElement("span");
  slack.className = "slack";
  slack.textContent = pair.verdict === "cannot tell" ? "" : pair.decides?.text ?? "";
  const check = document.createElement("small");
  check.textContent = pair.decides?.check ?? pair.refused ?? "";
  link.append(word, slack, check);
  td.append(link);
  if (pair.needs.length) td.append(needed(pair.needs));
}

// What is missing, each with the way to its field.
function needed(needs) {
  const small = document.createElement("small");
  small.className = "need";
  small.append("needs ");
  needs.forEach((need, i) => {
    const [, id, path] = need.match(/^([a-z0-9-]+)\.(.+)$/) ?? [];
    if (i) small.append(", ");
    if (!id) {
      small.append(need);
      return;
    }
    const field = document.createElement("a");
    const kit = /^(task|placements)\./.test(path);
    field.href = kit ? `/kits/${id}#f-${need}` : `/parts/${id}#p-${path}`;
    field.textContent = need;
    small.append(field);
  });
  return small;
}

if (progress?.dataset.stream) stream();
