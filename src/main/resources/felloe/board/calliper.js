// Readings of a calliper: sends them as they are typed, and shows what the server makes of them.

const PAUSE = 300;

const page = document.getElementById("calliper");
const rows = document.getElementById("rows");
const skipped = new Set();
let asked = [];
let timer = 0;
let turn = 0;

const part = (row, name) => row.querySelector(`[data-part=${name}]`);
const all = () => [...rows.children];
const empty = (row) => part(row, "reads").value.trim() === "";

function said() {
  const lines = all().map((row) => ["from", "to", "over", "reads"].map((name) =>
    part(row, name).value.replaceAll(";", " ")).join(";"));
  return new URLSearchParams({
    holes: page.dataset.holes, on: page.dataset.on, readings: lines.join("\n"),
  });
}

function add(pair) {
  const row = document.getElementById("row").content.firstElementChild.cloneNode(true);
  rows.append(row);
  if (pair) {
    put(row, pair);
  } else {
    part(row, "to").value = "2";
  }
  return row;
}

function put(row, pair) {
  row.dataset.asked = pair.words;
  for (const name of ["from", "to", "over"]) {
    part(row, name).value = pair[name];
  }
  part(row, "to").disabled = pair.over === "diameter";
}

/** The reading that helps most stands in an empty row at the end. */
function askNext() {
  const next = asked.find((one) => !skipped.has(one.words));
  const ask = document.getElementById("ask");
  const waits = all().find((row) => row.dataset.asked && empty(row));
  if (next) {
    ask.textContent = `Measure ${next.words}.`;
    put(waits ?? add(next), next);
  } else {
    ask.textContent = "No other reading is asked for.";
    waits?.remove();
  }
}

function tell(faults) {
  const lists = all();
  const general = faults.filter((one) => one.row < 0).map((one) => one.words);
  document.getElementById("general").textContent = general.join(" ");
  lists.forEach((row, index) => {
    const words = faults.filter((one) => one.row === index).map((one) => one.words).join(" ");
    const fault = row.querySelector(".fault");
    if (fault.textContent !== words) {
      fault.textContent = words;
    }
    fault.hidden = words === "";
    part(row, "reads").toggleAttribute("aria-invalid", false);
    if (words) {
      part(row, "reads").setAttribute("aria-invalid", "true");
    }
  });
}

async function look() {
  const mine = ++turn;
  try {
    const answer = await fetch("/hub/look", {method: "POST", body: said()});
    const now = await answer.json();
    if (mine !== turn) {
      return;
    }
    if (now.refused) {
      document.getElementById("general").textContent = now.refused;
      return;
    }
    tell(now.faults);
    if (now.sketch) {
      document.getElementById("sketch").innerHTML = now.sketch;
      document.getElementById("sofar").textContent = now.words;
      const view = document.getElementById("view");
      view.innerHTML = now.article;
      view.hidden = now.article === "";
      asked = now.next;
      askNext();
    }
  } catch {
    document.getElementById("general").textContent = "The board does not answer: is it still running?";
  }
}

function soon() {
  clearTimeout(timer);
  timer = setTimeout(look, PAUSE);
}

rows.addEventListener("input", (event) => {
  const row = event.target.closest("li");
  if (event.target.dataset.part !== "reads") {
    delete row.dataset.asked;
  }
  part(row, "to").disabled = part(row, "over").value === "diameter";
  soon();
});

rows.addEventListener("keydown", (event) => {
  if (event.key === "Enter") {
    event.preventDefault();
    look().then(() => part(rows.lastElementChild, "reads").focus());
  }
});

rows.addEventListener("click", (event) => {
  if (event.target.closest(".remove")) {
    event.target.closest("li").remove();
    document.getElementById("another").focus();
    look();
  }
});

document.getElementById("another").addEventListener("click", () => {
  part(add(), "from").focus();
});

document.getElementById("skip").addEventListener("click", () => {
  const next = asked.find((one) => !skipped.has(one.words));
  if (next) {
    skipped.add(next.words);
    askNext();
  }
});

document.getElementById("keep").addEventListener("submit", async (event) => {
  event.preventDefault();
  const words = said();
  words.set("name", document.getElementById("name").value);
  words.set("thread", document.getElementById("thread").value);
  const kept = document.getElementById("kept");
  const answer = await fetch("/hub/save", {method: "POST", body: words});
  const now = await answer.json();
  kept.textContent = now.refused ?? now.words;
  kept.className = now.refused ? "fault" : "";
  if (now.ask) {
    const link = document.createElement("a");
    link.href = now.ask;
    link.id = "begin";
    link.textContent = "Begin a shape with it";
    kept.append(" ", link);
  }
});

look();
