// Shows what the server draws and tells it what hands do. Nothing is reckoned here.
const shape = document.body.dataset.shape;
const base = "/shape/" + encodeURIComponent(shape) + "/";
const byId = (id) => document.getElementById(id);
const views = [["drawing", "Drawing"], ["review", "Review"], ["loads", "Loads"], ["template", "Template"],
  ["layup", "Lay-up"], ["cutting", "Cutting"], ["drilling", "Drilling"], ["grips", "Grips"], ["cockpit", "Cockpit"], ["card", "Job card"]];
let state = null, view = "drawing", busy = false, waiting = null, hand = 0, held = null;
const form = byId("form"), plate = byId("plate"), text = byId("text");

function say(words, ...buttons) {
  const notice = byId("notice");
  notice.replaceChildren();
  if (!words) return;
  notice.append(words);
  for (const [label, act] of buttons) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = label;
    button.addEventListener("click", act);
    notice.append(button);
  }
}

// One change at a time; of those that wait, later ones of the same hand take the place of earlier ones.
async function act(words) {
  if (busy) {
    if (waiting && !(waiting.hand && waiting.hand === words.hand && waiting.path === words.path)) {
      await new Promise((done) => { const old = waiting.then; waiting.then = () => { old && old(); done(); }; });
      return act(words);
    }
    waiting = {...words, then: waiting && waiting.then};
    return;
  }
  busy = true;
  await send("act", words);
  busy = false;
  const next = waiting;
  waiting = null;
  if (next) {
    const {then, ...more} = next;
    await act(more);
    then && then();
  }
}

async function send(door, words) {
  const body = new URLSearchParams(words);
  body.set("base", state.revision);
  body.set("form", state.form_key);
  body.set("against", byId("against").value);
  try {
    const answer = await fetch(base + door, {method: "POST", body});
    const got = await answer.json();
    if (answer.status === 409) {
      take(got);
      say("This shape was changed in another window. What you see now is the latest; do your change again.");
    } else if (got.refused) {
      say(got.refused);
      if (words.act === "write") show(state);
    } else {
      say("");
      take(got);
    }
  } catch (lost) {
    say("The board does not answer. What you did is kept beside the shape file; start it again and reload.");
  }
}

async function fresh() {
  const words = new URLSearchParams({form: state ? state.form_key : 0, against: byId("against").value});
  const answer = await fetch(base + "state?" + words);
  const got = await answer.json();
  if (got.refused) say(got.refused); else take(got);
}

function take(next) {
  const was = state || {};
  state = {...was, ...next, form: next.form === undefined ? was.form : next.form};
  show(state);
}

// The drawing comes first; what stands beside it is shown once the drawing is painted.
let beside = false;

function show(now) {
  drawing(now);
  if (document.hidden) { showBeside(now); return; }
  if (beside) return;
  beside = true;
  requestAnimationFrame(() => setTimeout(() => {
    beside = false;
    showBeside(state);
  }, 0));
}

function showBeside(now) {
  document.title = (now.title || shape) + ": drawing board";
  byId("title").textContent = now.title || shape;
  byId("saved").textContent = now.saved ? "saved" : "not saved";
  byId("undo").disabled = !now.undo;
  byId("redo").disabled = !now.redo;
  byId("save").disabled = now.saved;
  if (now.kept) {
    say("There is work on this shape that was not saved.",
      ["Go on with it", () => act({act: "take-kept"})], ["Throw it away", () => act({act: "drop-kept"})]);
  } else if (now.disk) {
    say("The file was changed on the disk meanwhile.",
      ["Take what is there", () => act({act: "take-disk"})], ["Save over it", () => send("save", {over: true})]);
  }
  if (document.activeElement !== text && text.value !== now.text) text.value = now.text;
  fields(now);
  faults(now);
  figures(now);
  loads(now.loads);
  if (view !== "drawing" && now.text !== shown) look();
  others(now);
}

function drawing(now) {
  const focus = document.activeElement && document.activeElement.dataset.handle;
  if (plate.dataset.drawn !== now.drawing) {
    plate.innerHTML = now.drawing;
    plate.dataset.drawn = now.drawing;
  }
  plate.classList.toggle("stale", now.stale);
  if (focus) {
    const again = plate.querySelector(`[data-handle="${CSS.escape(focus)}"]`);
    again && again.focus({preventScroll: true});
  }
  if (held) held.mark();
  const banner = byId("banner");
  const lines = now.problems.map((p) => (p.path ? p.path + ": " : "") + p.words);
  banner.hidden = now.plate;
  banner.textContent = now.plate ? "" :
    (now.stale ? "Shown is the last plate that could be drawn. " : "This is no plate as it is. ") + lines.slice(0, 3).join("\n");
}

function fields(now) {
  if (now.form !== undefined) {
    const open = new Map([...form.querySelectorAll("details")].map((d) => [d.dataset.path, d.open]));
    const focus = document.activeElement && form.contains(document.activeElement) ? document.activeElement : null;
    const path = focus && focus.dataset.path, kind = focus && focus.dataset.act;
    form.innerHTML = now.form;
    for (const d of form.querySelectorAll("details")) if (open.has(d.dataset.path)) d.open = open.get(d.dataset.path);
    if (path) {
      const again = form.querySelector(`[data-path="${CSS.escape(path)}"]${kind ? `[data-act="${kind}"]` : "[id]"}`);
      again && again.focus({preventScroll: true});
    }
    delete now.form;
  }
  for (const field of form.querySelectorAll("[id][data-path]")) {
    const value = now.values[field.dataset.path];
    if (value === undefined) continue;
    if (field.type === "checkbox") field.checked = value === "true";
    else if (field !== document.activeElement && field.value !== value) field.value = value;
  }
  for (const slide of form.querySelectorAll("[data-slide]")) {
    if (slide !== document.activeElement) slide.value = now.values[slide.dataset.slide];
  }
}

function faults(now) {
  for (const p of form.querySelectorAll("[data-fault]")) { p.hidden = true; p.textContent = ""; }
  for (const field of form.querySelectorAll("[aria-invalid]")) field.removeAttribute("aria-invalid");
  for (const group of form.querySelectorAll("details.wrong")) group.classList.remove("wrong");
  const rest = [];
  for (const problem of now.problems) {
    let path = problem.path, place = null;
    while (path && !place) {
      place = form.querySelector(`[data-fault="${CSS.escape(path)}"]`);
      if (!place) path = path.replace(/(\.[^.[\]]*|\[\d+\]|^[^.[\]]+)$/, "");
    }
    if (!place) { rest.push(problem); continue; }
    place.hidden = false;
    place.textContent = (place.textContent ? place.textContent + " " : "") + problem.words;
    const field = form.querySelector(`[id][data-path="${CSS.escape(path)}"]`);
    field && field.setAttribute("aria-invalid", "true");
    for (let up = place.closest("details"); up; up = up.parentElement.closest("details")) up.classList.add("wrong");
  }
  byId("faults").replaceChildren(...rest.map((problem) => {
    const p = document.createElement("p");
    p.className = "fault";
    p.textContent = (problem.line ? "line " + problem.line + ": " : "") + problem.words;
    return p;
  }));
  byId("text-faults").replaceChildren(...now.problems.map((problem) => {
    const item = document.createElement("li"), button = document.createElement("button");
    button.type = "button";
    button.textContent = (problem.line ? "line " + problem.line + ": " : "") + (problem.path ? problem.path + ": " : "") + problem.words;
    button.addEventListener("click", () => toLine(problem.line));
    item.append(button);
    return item;
  }));
}

function toLine(line) {
  if (!line) return;
  const lines = text.value.split("\n");
  const from = lines.slice(0, line - 1).join("\n").length + (line > 1 ? 1 : 0);
  text.focus();
  text.setSelectionRange(from, from + (lines[line - 1] || "").length);
}

function figures(now) {
  const verdict = byId("verdict");
  verdict.textContent = now.verdict || "No plate yet.";
  verdict.className = "tone-" + now.tone;
  byId("figures").replaceChildren(...now.figures.flatMap((one) => {
    const dt = document.createElement("dt"), dd = document.createElement("dd");
    dt.textContent = one.name;
    dd.textContent = one.words;
    return [dt, dd];
  }));
  byId("findings").replaceChildren(...now.findings.map((one, i) => {
    const item = document.createElement("li"), button = document.createElement("button");
    const head = document.createElement("strong");
    item.className = one.tone;
    item.dataset.finding = i;
    head.textContent = one.head;
    button.type = "button";
    button.append(head, " " + one.is + ". ", one.advice);
    for (const on of ["mouseenter", "focusin"]) item.addEventListener(on, () => light(i, one.path, true));
    for (const off of ["mouseleave", "focusout"]) item.addEventListener(off, () => light(i, one.path, false));
    button.addEventListener("click", () => { choose("drawing"); open(one.path); });
    item.append(button);
    return item;
  }));
}

function light(i, path, on) {
  const marks = [...document.querySelectorAll(`[data-finding="${i}"]`)];
  if (path) marks.push(...document.querySelectorAll(`.edge[data-path="${CSS.escape(path)}"], .field[data-path="${CSS.escape(path)}"], .group[data-path="${CSS.escape(path)}"]`));
  for (const mark of marks) mark.classList.toggle("lit", on);
}

function open(path) {
  const place = path && form.querySelector(`[data-path="${CSS.escape(path)}"]`);
  if (!place) return;
  for (let up = place.closest("details"); up; up = up.parentElement.closest("details")) up.open = true;
  place.scrollIntoView({block: "nearest"});
}

function loads(now) {
  const place = byId("loads");
  const stages = {waits: "Loads: reckoning\u2026", first: "Loads, first figures, still reckoning: ", own: "Loads: ", done: "Loads: ", cannot: "Loads cannot be reckoned: "};
  place.textContent = (stages[now.stage] || "") + now.words;
  place.className = now.stage === "waits" ? "" : "tone-" + now.tone;
  if (view === "loads" && (now.stage === "own" || now.stage === "done") && place.dataset.stage !== now.stage) look();
  place.dataset.stage = now.stage;
}

// What may be laid over it: earlier states, the newest first, and other shapes
function others(now) {
  const pick = byId("against"), was = pick.value;
  const key = now.steps.length + now.others.join();
  if (pick.dataset.key === key) return;
  pick.dataset.key = key;
  const options = [new Option("nothing", "")];
  for (let i = now.steps.length - 1; i >= 0 && i > now.steps.length - 200; i--) options.push(new Option((i + 1) + ": " + now.steps[i], i));
  for (const name of now.others) if (name !== shape) options.push(new Option(name, name));
  pick.replaceChildren(...options);
  pick.value = was;
}
byId("against").addEventListener("change", fresh);

// A figure that is pulled to where it is wanted
byId("pull-figure").addEventListener("change", () => {
  const mass = byId("pull-figure").value === "mass", slide = byId("pull-slide");
  [slide.min, slide.max, slide.step] = mass ? [-100, 100, 5] : [-5, 5, 0.25];
  slide.value = byId("pull-by").value = mass ? -20 : -1;
});
byId("pull-slide").addEventListener("input", () => { byId("pull-by").value = byId("pull-slide").value; });
byId("pull-by").addEventListener("input", () => { byId("pull-slide").value = byId("pull-by").value; });
byId("pull").addEventListener("click", async () => {
  const words = byId("pull-words");
  byId("pull-ways").replaceChildren();
  words.textContent = "Values are being tried\u2026";
  byId("pull").disabled = true;
  try {
    const answer = await fetch(base + "pull?" + new URLSearchParams({figure: byId("pull-figure").value, by: byId("pull-by").value.trim()}));
    const got = await answer.json();
    words.textContent = got.refused || got.words;
    byId("pull-ways").replaceChildren(...(got.ways || []).map((way) => {
      const item = document.createElement("li"), look = document.createElement("button"), takeIt = document.createElement("button");
      look.type = takeIt.type = "button";
      look.textContent = "Look";
      takeIt.textContent = "Take it";
      look.setAttribute("aria-label", "look at " + way.path + " " + way.to);
      takeIt.setAttribute("aria-label", "take " + way.path + " " + way.to);
      look.addEventListener("click", () => {
        const pick = byId("against"), value = way.path + "=" + way.to;
        if (![...pick.options].some((one) => one.value === value)) pick.append(new Option("try " + way.path + ": " + way.to, value));
        pick.value = value;
        choose("drawing");
        fresh();
      });
      takeIt.addEventListener("click", () => { byId("against").value = ""; act({act: "write", path: way.path, value: way.to}); });
      item.append(way.words + " ", look, takeIt);
      return item;
    }));
  } catch (lost) {
    words.textContent = "The board does not answer.";
  }
  byId("pull").disabled = false;
});

function writing(asText) {
  form.hidden = asText;
  byId("faults").hidden = asText;
  byId("text-view").hidden = !asText;
  byId("as-values").setAttribute("aria-selected", String(!asText));
  byId("as-text").setAttribute("aria-selected", String(asText));
}
byId("as-values").addEventListener("click", () => writing(false));
byId("as-text").addEventListener("click", () => writing(true));

let shown = null;
async function look() {
  const at = view, of = state.text, place = byId("view");
  shown = of;
  place.setAttribute("aria-busy", "true");
  const answer = await fetch(base + "view?name=" + at);
  const got = await answer.text();
  if (at !== view) return;
  place.removeAttribute("aria-busy");
  if (answer.ok) {
    place.innerHTML = got || "<p>Still reckoning\u2026</p>";
    const canvas = place.querySelector("canvas.solid");
    if (canvas) (await import("/parts/solid.js")).mount(canvas, base);
    if (place.querySelector("[data-note]")) notes(place);
    for (const order of place.querySelectorAll(".order")) play(order);
  }
  else {
    const p = document.createElement("p");
    p.textContent = JSON.parse(got).refused;
    p.className = "callout";
    place.replaceChildren(p);
  }
}

// What is ticked and written down at the bench
async function notes(place) {
  const answer = await fetch(base + "notes"), known = await answer.json();
  if (known.refused) { say(known.refused); return; }
  for (const field of place.querySelectorAll("[data-note]")) {
    const is = known[field.dataset.note];
    if (field.type === "checkbox") field.checked = is === "done";
    else field.value = is || "";
  }
  place.onchange = async (event) => {
    const field = event.target;
    if (field.dataset.note === undefined) return;
    const is = field.type === "checkbox" ? (field.checked ? "done" : "") : field.value;
    const got = await (await fetch(base + "notes", {method: "POST", body: new URLSearchParams({of: field.dataset.note, is})})).json();
    if (got.refused) say(got.refused);
  };
}

// Paths in the order in which they are cut
function play(order) {
  const passes = [...order.querySelectorAll(".pass")], where = order.querySelector("[data-play=where]");
  const steps = [...order.querySelectorAll("[data-step][data-first]")];
  let at = passes.length, timer = null;
  function to(next) {
    at = Math.max(0, Math.min(passes.length, next));
    passes.forEach((pass, i) => { pass.classList.toggle("todo", i >= at); pass.classList.toggle("now", i === at - 1); });
    const step = at ? passes[at - 1].dataset.step : "";
    steps.forEach((item) => item.classList.toggle("now", item.dataset.step === step));
    where.textContent = at + " of " + passes.length;
  }
  function stop() { clearInterval(timer); timer = null; order.querySelector("[data-play=play]").textContent = "Play the order"; }
  order.addEventListener("click", (event) => {
    const what = event.target.dataset.play;
    if (what === "play" && timer) stop();
    else if (what === "play") {
      if (at === passes.length) to(0);
      event.target.textContent = "Stop";
      timer = setInterval(() => { to(at + 1); if (at === passes.length || !order.isConnected) stop(); }, Math.max(60, 6000 / passes.length));
    } else if (what) { stop(); to(at + (what === "on" ? 1 : -1)); }
  });
  to(at);
}

function choose(name) {
  view = name;
  for (const tab of byId("tabs").children) {
    tab.setAttribute("aria-selected", String(tab.dataset.view === name));
    tab.tabIndex = tab.dataset.view === name ? 0 : -1;
  }
  byId("keep").href = base + "view?save=true&name=" + name;
  byId("sheet").hidden = name !== "drawing";
  const other = name !== "drawing";
  byId("view").hidden = !other;
  if (other) { byId("view").innerHTML = "<p>It is being made\u2026</p>"; look(); }
}

for (const [name, label] of views) {
  const tab = document.createElement("button");
  tab.type = "button";
  tab.textContent = label;
  tab.dataset.view = name;
  tab.setAttribute("role", "tab");
  tab.setAttribute("aria-controls", name === "drawing" ? "sheet" : "view");
  tab.addEventListener("click", () => choose(name));
  byId("tabs").append(tab);
}
byId("tabs").addEventListener("keydown", (event) => {
  const by = {ArrowRight: 1, ArrowLeft: -1}[event.key];
  if (!by) return;
  const all = [...byId("tabs").children], at = all.indexOf(document.activeElement);
  const next = all[(at + by + all.length) % all.length];
  next.focus();
  choose(next.dataset.view);
});

// Fields
form.addEventListener("focusin", () => { hand++; });
form.addEventListener("input", (event) => {
  const field = event.target;
  if (field.dataset.slide) act({act: "write", path: field.dataset.slide, value: field.value, hand: "s" + hand});
  else if (field.type === "text" && field.dataset.path) act({act: "write", path: field.dataset.path, value: field.value, hand: "w" + hand});
});
form.addEventListener("change", (event) => {
  const field = event.target;
  if (field.dataset.add !== undefined) {
    if (field.value) act({act: "add", path: field.dataset.add, key: field.value});
  } else if (field.type === "checkbox") act({act: "write", path: field.dataset.path, value: String(field.checked)});
  else if (field.tagName === "SELECT") act({act: "write", path: field.dataset.path, value: field.value});
});
form.addEventListener("click", (event) => {
  const button = event.target.closest("button[data-act]");
  if (!button) return;
  act({act: button.dataset.act, path: button.dataset.path, by: button.dataset.by || 0, fine: event.shiftKey});
});
form.addEventListener("submit", (event) => event.preventDefault());
form.addEventListener("keydown", (event) => {
  const field = event.target, by = {ArrowUp: 1, ArrowDown: -1}[event.key];
  if (by && field.inputMode === "decimal") {
    event.preventDefault();
    act({act: "step", path: field.dataset.path, by, fine: event.shiftKey}).then(() => { field.value = state.values[field.dataset.path] ?? field.value; });
  }
});

// Text
text.addEventListener("focus", () => { hand++; });
text.addEventListener("input", () => act({act: "text", value: text.value, hand: "t" + hand, path: ""}));

// Hands on the drawing
function place(event) {
  const svg = plate.querySelector("svg");
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  return {x: at.x.toFixed(4), y: (-at.y).toFixed(4)};
}
plate.addEventListener("pointerdown", (event) => {
  const grip = event.target.closest(".handle");
  if (!grip || event.button !== 0) return;
  event.preventDefault();
  const path = grip.dataset.handle;
  held = {path, id: "d" + (++hand), mark() { const g = plate.querySelector(`[data-handle="${CSS.escape(path)}"]`); g && g.classList.add("held"); }};
  held.mark();
  plate.setPointerCapture(event.pointerId);
  grip.focus({preventScroll: true});
});
plate.addEventListener("pointermove", (event) => {
  if (held) act({act: "drag", path: held.path, ...place(event), fine: event.shiftKey, hand: held.id});
});
for (const end of ["pointerup", "pointercancel"]) plate.addEventListener(end, () => { held = null; for (const g of plate.querySelectorAll(".held")) g.classList.remove("held"); });
plate.addEventListener("keydown", (event) => {
  const grip = event.target.closest(".handle"), way = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]}[event.key];
  if (!grip || !way) return;
  event.preventDefault();
  const step = grip.classList.contains("clock") ? (event.shiftKey ? 1 : 13) : (event.shiftKey ? 0.1 : 1);
  act({act: "drag", path: grip.dataset.handle, x: Number(grip.dataset.x) + way[0] * step, y: Number(grip.dataset.y) + way[1] * step,
    fine: !grip.classList.contains("clock") || event.shiftKey, hand: ""});
});
plate.addEventListener("click", (event) => {
  const edge = event.target.closest("[data-path]"), mark = event.target.closest("[data-finding]");
  if (mark) {
    const item = byId("findings").children[mark.dataset.finding];
    item && item.querySelector("button").focus();
  } else if (edge && !event.target.closest(".handle")) open(edge.dataset.path);
});

// The shape file
byId("undo").addEventListener("click", () => act({act: "undo"}));
byId("redo").addEventListener("click", () => act({act: "redo"}));
byId("save").addEventListener("click", () => send("save", {}));
byId("zip").href = base + "kit";

// A file is fetched first, so that what cannot be made is said and not kept
async function keep(event) {
  event.preventDefault();
  const link = event.currentTarget;
  say("It is being made\u2026");
  try {
    const answer = await fetch(link.href);
    if (!answer.ok) { say((await answer.json()).refused); return; }
    const named = /filename="([^"]+)"/.exec(answer.headers.get("Content-Disposition") || "");
    const file = document.createElement("a");
    file.href = URL.createObjectURL(await answer.blob());
    file.download = named ? named[1] : "";
    file.click();
    setTimeout(() => URL.revokeObjectURL(file.href), 60000);
    say("");
  } catch (lost) {
    say("The board does not answer.");
  }
}
byId("zip").addEventListener("click", keep);
byId("keep").addEventListener("click", keep);
byId("write").addEventListener("click", async () => {
  say("The kit is being made\u2026");
  const answer = await fetch(base + "kit", {method: "POST", body: new URLSearchParams()});
  const got = await answer.json();
  say(got.refused ? got.refused : "Written: " + got.files.length + " files, into " + got.files[0].replace(/[^/\\]*$/, ""));
});
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey)) return;
  const key = event.key.toLowerCase();
  if (key === "s") { event.preventDefault(); if (!state.saved) send("save", {}); }
  else if (key === "z" || key === "y") {
    event.preventDefault();
    document.activeElement && document.activeElement.blur();
    act({act: key === "y" || event.shiftKey ? "redo" : "undo"});
  }
});

const news = new EventSource(base + "news");
news.addEventListener("message", (event) => {
  const got = JSON.parse(event.data);
  if (!state) return;
  state.loads = got.loads;
  loads(got.loads);
  if (!busy && (got.revision !== state.revision || got.disk !== state.disk || got.saved !== state.saved)) fresh();
});
window.addEventListener("beforeunload", () => news.close());
choose("drawing");
fresh();
