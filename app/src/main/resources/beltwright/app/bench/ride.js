// Draws the channels of a ride, one field under the other, with one cursor through all of them. It works nothing out:
// every reading shown is one that the server sent. Without this module the page shows the ride as a drawing.

import uPlot from "/uplot.js";

const LEFT = 54; // room for the numbers of the left scale (px), the same in every field so that they stand in line
const RIGHT = 46;
const HEIGHTS = { road: 120, speed: 130 };
const HEIGHT = 104;

const charts = document.getElementById("charts");
const slider = document.getElementById("cursor");
const tone = (name) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

let route = null; // the whole road, as it was recorded
let rides = []; // what the server sent, one or two
let over = "distance";
let merged = null; // both rides along one scale: x, and for each ride the row of the merged table of each reading
let plots = [];
let at = 0; // which reading of the first ride

function channel(ride, name) {
  return ride.channels.find((c) => c.name === name).values;
}

// Readings of both rides in one order. Nothing is put in between: a ride has no value where it has no reading.
function merge() {
  const rows = [];
  rides.forEach((ride, r) => channel(ride, over).forEach((x, i) => rows.push([x, r, i])));
    if (over === "distance") route.distanceM.forEach((x, i) => rows.push([x, rides.length, i]));
  const place = [...rides, route].map(() => []);
  rows.sort((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2]);
  rows.forEach(([, r, i], row) => { place[r][i] = row; });
  return { x: rows.map((row) => row[0]), place, length: rows.length };
}

function spread(values, place) {
  const out = new Array(merged.length).fill(null);
  values.forEach((v, i) => { out[place[i]] = v; });
  return out;
}

function axis(scale, side, units) {
  return {
    scale, side, size: side === 1 ? RIGHT : side === 3 ? LEFT : 30,
    font: `11px ${tone("--face")}`, stroke: tone("--ink"),
    grid: { show: side !== 1, stroke: tone("--hair"), width: 1 }, ticks: { stroke: tone("--ink"), width: 1, size: 4 },
    gap: 4, values: (u, splits) => splits.map((v) => (v === null ? "" : `${v}${units}`.replace("-", "−"))),
  };
}

// Where a limit governed the first ride, and what happened to it.
function shade(u, key) {
  const ends = over === "time" ? ["fromS", "toS"] : ["fromM", "toM"];
  const { ctx } = u;
  const { left, top, width, height } = u.bbox;
  ctx.save();
  ctx.beginPath();
  ctx.rect(left, top, width, height);
  ctx.clip();
  const dense = devicePixelRatio || 1;
  rides[0].spans.forEach((span, i) => {
    const a = u.valToPos(span[ends[0]], "x", true);
    const b = Math.max(u.valToPos(span[ends[1]], "x", true), a + dense);
    ctx.globalAlpha = 0.13;
    ctx.fillStyle = tone("--ink");
    ctx.fillRect(a, top, b - a, height);
    if (key === "road") {
      ctx.globalAlpha = 1;
      ctx.font = `${11 * dense}px ${tone("--face")}`;
      ctx.textBaseline = "top";
      const next = rides[0].spans[i + 1];
      const room = (next ? u.valToPos(next[ends[0]], "x", true) : left + width) - a - 4 * dense;
      const words = [span.what, String(i + 1)].find((w) => ctx.measureText(w).width < room);
      if (words) {
        ctx.fillStyle = tone("--ink");
        ctx.strokeStyle = tone("--paper");
        ctx.lineWidth = 3 * dense;
        ctx.strokeText(words, a + 3 * dense, top + 3 * dense);
        ctx.fillText(words, a + 3 * dense, top + 3 * dense);
      }
    }
  });
  ctx.globalAlpha = 1;
  ctx.strokeStyle = tone("--mid");
  ctx.lineWidth = dense;
  ctx.setLineDash([2 * dense, 3 * dense]);
  rides[0].events.filter((e) => !["met", "left", "start", "arrived"].includes(e.kind)).forEach((e) => {
    const x = Math.round(u.valToPos(over === "time" ? e.timeS : e.distanceM, "x", true)) + 0.5;
    ctx.beginPath();
    ctx.moveTo(x, top);
    ctx.lineTo(x, top + height);
    ctx.stroke();
  });
  ctx.restore();
}

// The road leaves room above it for the names of the limits.
function headroom(u, low, high) {
  const span = Math.max(high - low, 1);
  return [low - 0.06 * span, high + 0.34 * span];
}

function field(box) {
  const key = box.dataset.chart;
  const lines = [...box.querySelectorAll("[data-line]")].filter((l) => l.dataset.style !== "value");
  const data = [merged.x];
  const series = [{}];
  const owner = [0];
  lines.forEach((line) => rides.forEach((ride, r) => {
    data.push(spread(channel(ride, line.dataset.line), merged.place[r]));
    owner.push(r);
    series.push({
      scale: line.dataset.style === "right" ? "right" : "y", spanGaps: true, points: { show: false },
      stroke: r === 0 ? tone("--ink") : tone("--accent"), width: r === 0 && line.dataset.style === "solid" ? 1.6 : 1.2,
      dash: line.dataset.style === "solid" ? undefined : [5, 3],
      pxAlign: 0,
    });
  }));
  if (key === "road" && over === "distance") {
    data.splice(1, 0, spread(route.elevationM, merged.place[rides.length]));
    series.splice(1, 0, { spanGaps: true, points: { show: false }, stroke: tone("--mid"), width: 1, fill: tone("--fill"), pxAlign: 0 });
    owner.splice(1, 0, -1);
  }
  const right = lines.some((l) => l.dataset.style === "right");
  const last = box === charts.querySelector(".chart:last-child");
  const axes = [{ ...axis("x", 2, ""), size: last ? 30 : 8, values: last ? axis("x", 2, "").values : () => [] }, axis("y", 3, "")];
  if (right) axes.push(axis("right", 1, ""));
  const silent = () => null;
  const plot = new uPlot({
    width: box.clientWidth, height: (HEIGHTS[key] ?? HEIGHT) + (last ? 22 : 0),
    padding: [6, right ? 0 : RIGHT, 0, 0],
    scales: { x: { time: false, range: (u, a, b) => [a, b] }, ...(key === "road" ? { y: { range: headroom } } : {}) },
    series, axes, legend: { show: false },
    cursor: {
      y: false, drag: { x: false, y: false }, dataIdx: (u, s, i) => (owner[s] < 0 ? i : merged.place[owner[s]][near(owner[s])]),
      points: { size: (u, s) => (owner[s] < 0 ? 0 : 6), fill: (u, s) => series[s].stroke, width: 0 },
      bind: { mousedown: silent, mouseup: silent, click: silent, dblclick: silent, mousemove: silent, mouseleave: silent, mouseenter: silent },
    },
    hooks: { drawClear: [(u) => shade(u, key)] },
  }, data, box.querySelector(".plot"));
  const follow = (e) => show(nearest(channel(rides[0], over), plot.posToVal(e.offsetX, "x")));
  plot.over.addEventListener("pointermove", follow);
  plot.over.addEventListener("pointerdown", follow);
  return plot;
}

// The reading next to a value; the first of those that stand at the same place.
function nearest(values, x) {
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle] < x) low = middle + 1;
    else high = middle;
  }
  return low > 0 && x - values[low - 1] < values[low] - x ? low - 1 : low;
}

// Which reading of a ride stands at the cursor: the one beside the reading of the first.
function near(r) {
  return r === 0 ? at : nearest(channel(rides[r], over), channel(rides[0], over)[at]);
}

function written(value, decimals) {
  return value === null || value === undefined ? "–"
    : typeof value === "string" ? value : value.toFixed(decimals).replace("-", "−");
}

function show(i) {
  at = Math.max(0, Math.min(channel(rides[0], "time").length - 1, i));
  const places = rides.map((ride, r) => near(r));
  document.querySelectorAll("[data-value]").forEach((cell) => {
    const r = Number(cell.dataset.ride);
    cell.textContent = written(channel(rides[r], cell.dataset.value)[places[r]], Number(cell.dataset.decimals));
  });
  const x = channel(rides[0], over)[at];
  plots.forEach((u) => u.setCursor({ left: u.valToPos(x, "x"), top: 10 }));
  slider.setAttribute("aria-valuenow", String(at));
  const say = (name) => written(channel(rides[0], name)[at], 1);
  slider.setAttribute("aria-valuetext",
    `${say("time")} s, ${say("distance")} m, ${say("speed")} km/h, ${channel(rides[0], "what governs")[at]}`);
}

function build() {
  plots.forEach((u) => u.destroy());
  merged = merge();
  plots = [...charts.querySelectorAll(".chart")].map(field);
  slider.setAttribute("aria-valuemax", String(channel(rides[0], "time").length - 1));
  show(at);
}

slider.addEventListener("keydown", (event) => {
  const last = channel(rides[0], "time").length - 1;
  const step = event.shiftKey ? 10 : 1;
  const to = { ArrowRight: at + step, ArrowUp: at + step, ArrowLeft: at - step, ArrowDown: at - step,
    PageUp: at + 60, PageDown: at - 60, Home: 0, End: last }[event.key];
  if (to === undefined) return;
  event.preventDefault();
  show(to);
});

charts.addEventListener("click", (event) => {
  const button = event.target.closest("[data-over]");
  if (!button) return;
  over = button.dataset.over;
  charts.querySelectorAll("[data-over]").forEach((b) => b.setAttribute("aria-pressed", String(b === button)));
  build();
});

document.addEventListener("click", (event) => {
  const go = event.target.closest(".go");
  if (!go) return;
  const mine = channel(rides[Number(go.dataset.ride)], "time");
  const there = nearest(mine, Number(go.dataset.at));
  show(nearest(channel(rides[0], over), channel(rides[Number(go.dataset.ride)], over)[there]));
  slider.focus();
});

const sent = async (address) => (await fetch(address)).json();
route = await sent(charts.dataset.route);
rides = await Promise.all(charts.dataset.rides.trim().split(/\s+/).map(sent));
document.documentElement.classList.add("charted");
build();
new ResizeObserver(() => plots.forEach((u) => u.setSize({ width: u.root.parentElement.clientWidth, height: u.height }))).observe(charts);
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", build);
performance.mark("beltwright-ready");
