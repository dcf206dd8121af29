// The first pages: looks how far a wheel has come that is being made, and sends a drawing that is
// brought in. Nothing is reckoned here.

const PAUSE = 700;

const waiting = document.getElementById("making");

async function look() {
  try {
    const answer = await fetch(waiting.dataset.state);
    const now = await answer.json();
    if (now.done || !answer.ok) {
      location.reload();
      return;
    }
    const stage = document.getElementById("stage");
    if (stage.textContent !== now.words) {
      stage.textContent = now.words;
    }
    document.getElementById("seconds").textContent = `${now.seconds} s`;
  } catch {
    document.getElementById("stage").textContent = "the board does not answer: is it still running?";
  }
  setTimeout(look, PAUSE);
}

if (waiting) {
  setTimeout(look, PAUSE);
}

const LARGEST = 8 * 1024 * 1024;

const form = document.getElementById("outline");

function tell(lines, fails) {
  const told = document.getElementById("brought");
  told.replaceChildren(...lines.map((line) => {
    const words = document.createElement("p");
    words.textContent = line;
    return words;
  }));
  told.classList.toggle("tone-fail", fails);
  told.classList.toggle("tone-well", !fails);
  return told;
}

async function bring() {
  const file = document.getElementById("file").files[0];
  if (!file) {
    tell(["Choose a file."], true);
    return;
  }
  if (file.size > LARGEST) {
    tell(["The file is too large: at most 8 MiB are read."], true);
    return;
  }
  const stem = file.name.replace(/\.[^.]*$/, "").replace(/[^A-Za-z0-9_-]+/g, "-").replace(/^-+/, "");
  const said = new URLSearchParams({
    file: file.name,
    name: document.getElementById("as").value.trim() || `${stem || "outline"}.yaml`,
    width: document.getElementById("width").value.trim(),
    scale: document.getElementById("scale").value.trim(),
    gap: document.getElementById("gap").value.trim(),
    thickness: document.getElementById("thickness").value.trim(),
    "camera-height": document.getElementById("camera-height").value.trim(),
  });
  tell([/\.(jpe?g|png)$/i.test(file.name) ? "Measuring it: that takes some seconds." : "Reading it."], false);
  try {
    const answer = await fetch(`/start/outline?${said}`, {
      method: "POST", headers: {"Content-Type": "application/octet-stream"}, body: file,
    });
    const now = await answer.json();
    if (now.refused) {
      tell(now.refused.split("\n"), true);
      return;
    }
    const link = document.createElement("a");
    link.href = now.to;
    link.id = "to-board";
    link.className = "button";
    link.textContent = "Open it on the board";
    const told = tell(now.words, false);
    if (now.picture) {
      const flat = document.createElement("img"), keep = document.createElement("a");
      flat.src = keep.href = now.picture;
      flat.alt = "The photo laid flat, with the lines that were found on it in red and what is in doubt ringed in blue";
      keep.download = `${stem || "outline"}-photo.png`;
      keep.textContent = "Keep this picture";
      told.append(flat, keep, " ");
    }
    told.append(link);
  } catch {
    tell(["The board does not answer, or the file was changed while it was read."], true);
  }
}

form?.addEventListener("submit", (event) => {
  event.preventDefault();
  bring();
});
