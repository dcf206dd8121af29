// The first pages: looks how far a wheel has come that is being made. Nothing is reckoned here.

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
