// The one script of the pages. Every page works without it: it only saves
// touches. Nothing is fetched that is not of this app.
"use strict";

const base = document.body.dataset.base;
const part = { "X-Part": "1" };

// Forms with live margins: each change asks for the margins that would
// follow; of answers that come late only the newest is shown.
for (const form of document.querySelectorAll("form[data-live]")) {
  const place = document.getElementById("live");
  let asked = 0, running = false, again = false;
  const ask = async () => {
    if (running) { again = true; return; }
    running = true;
    const mine = ++asked;
    const values = new URLSearchParams(new FormData(form));
    values.delete("form");
    try {
      const answer = await fetch(form.dataset.liveFrom + "&" + values, { headers: part });
      if (answer.ok && mine === asked) {
        place.innerHTML = await answer.text();
        place.dataset.shown = String(mine);
      }
    } catch { /* the page stays as it is */ }
    running = false;
    if (again) { again = false; ask(); }
  };
  form.addEventListener("input", ask);
  if (form.method === "get") {
    // What was wrong with a reading is over once it is typed anew.
    form.addEventListener("input", (event) => {
      const field = event.target.closest(".wrong");
      field?.querySelector(".fault")?.remove();
      field?.querySelector("[aria-invalid]")?.removeAttribute("aria-invalid");
      field?.classList.remove("wrong");
    });
  }
  ask();
}

// Answers of a look: kept at once, the sign comes back as it stands now.
document.addEventListener("submit", async (event) => {
  const form = event.target;
  if (!form.matches("form[data-answer]")) return;
  event.preventDefault();
  const pressed = event.submitter;
  const values = new URLSearchParams(new FormData(form));
  values.set(pressed.name, pressed.value);
  const sign = form.closest(".sign");
  try {
    const answer = await fetch(form.action, { method: "POST", body: values, headers: part });
    if (!answer.ok) throw new Error(String(answer.status));
    const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
    document.getElementById("look-state").replaceWith(fresh.getElementById("look-state"));
    const now = fresh.querySelector(".sign");
    now.querySelector("details").open = sign.querySelector("details").open;
    sign.replaceWith(now);
    const same = now.querySelector(`button[value="${pressed.value}"]`);
    if (same) same.focus({ preventScroll: true });
  } catch {
    form.querySelector("[data-status]").textContent = form.dataset.failed;
  }
});

// Photos are made smaller here and sent as bytes: some browsers hand a worker
// empty files.
const longest = 1600;
async function smaller(file) {
  try {
    const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
    const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.round(picture.width * scale);
    canvas.height = Math.round(picture.height * scale);
    canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
    const small = await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.85));
    return small && (scale < 1 || small.size < file.size) ? small : file;
  } catch {
    return file; // what the browser cannot draw is sent as it is
  }
}
for (const form of document.querySelectorAll("form[data-photo]")) {
  const status = form.querySelector("[data-status]");
  const send = async () => {
    const file = form.querySelector("input[type=file]").files[0];
    if (!file) return;
    status.textContent = status.dataset.busy;
    try {
      const small = await smaller(file);
      const bytes = await small.arrayBuffer();
      const id = encodeURIComponent(form.querySelector("input[name=form]").value);
      const answer = await fetch(form.action + "?form=" + id, { method: "POST", body: bytes, headers: { "Content-Type": small.type || "image/jpeg" } });
      if (!answer.ok) {
        const page = new DOMParser().parseFromString(await answer.text(), "text/html");
        status.textContent = page.querySelector(".problems")?.textContent || status.dataset.failed;
        return;
      }
      location.assign(answer.url);
    } catch {
      status.textContent = status.dataset.failed;
    }
  };
  form.addEventListener("submit", (event) => { event.preventDefault(); send(); });
  form.querySelector("input[type=file]").addEventListener("change", send);
}
for (const form of document.querySelectorAll("form[data-import]")) {
  form.addEventListener("submit", async (event) => {
    const file = form.querySelector("input[type=file]").files[0];
    if (file?.name.endsWith(".zip")) return; // too large to be held; it goes as a form does
    event.preventDefault();
    if (!file) return;
    const id = encodeURIComponent(form.querySelector("input[name=form]").value);
    const answer = await fetch(form.action + "?form=" + id, { method: "POST", body: await file.arrayBuffer(), headers: { "Content-Type": "application/json" } });
    if (answer.ok) { location.assign(answer.url); return; }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    document.querySelector("main").replaceWith(page.querySelector("main"));
    document.querySelector(".problems")?.focus();
  });
}

// The position of this device, with the error it states.
for (const button of document.querySelectorAll("[data-position]")) {
  const status = button.parentElement.querySelector("[data-status]");
  button.hidden = !navigator.geolocation;
  button.addEventListener("click", () => {
    status.textContent = button.dataset.busy;
    navigator.geolocation.getCurrentPosition((found) => {
      const form = button.closest("form");
      form.elements.namedItem("latitude").value = found.coords.latitude.toFixed(6);
      form.elements.namedItem("longitude").value = found.coords.longitude.toFixed(6);
      status.textContent = button.dataset.found + " " + Math.round(found.coords.accuracy);
      form.dispatchEvent(new Event("input", { bubbles: true }));
    }, () => { status.textContent = button.dataset.failed; }, { enableHighAccuracy: true, timeout: 60000 });
  });
}

// What is typed into a form is kept on this device until it is saved, so that
// a dead battery costs nothing.
for (const form of document.querySelectorAll("form[data-draft]")) {
  const key = "draft " + form.action;
  const kept = JSON.parse(localStorage.getItem(key) || "null");
  const revision = form.elements.namedItem("revision").value;
  if (kept && kept.revision === revision && !document.querySelector(".problems")) {
    for (const [name, value] of kept.values) {
      const field = form.elements.namedItem(name);
      if (field && name !== "form" && name !== "revision") field.value = value;
    }
    form.dispatchEvent(new Event("input"));
  }
  form.addEventListener("input", (event) => {
    if (!event.isTrusted && !event.bubbles) return;
    localStorage.setItem(key, JSON.stringify({ revision, values: [...new FormData(form)] }));
  });
  form.addEventListener("submit", () => localStorage.removeItem(key));
  form.querySelector(".send a").addEventListener("click", () => localStorage.removeItem(key));
}

// Outcomes that were not worked out yet are asked for until all are there.
async function rest() {
  const list = document.getElementById("trees");
  if (!list || !list.hasAttribute("data-waiting")) return;
  const answer = await fetch(location.href, { headers: part });
  if (!answer.ok) return;
  const fresh = new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("trees");
  list.replaceWith(fresh);
  for (const script of fresh.querySelectorAll("script")) { // what is put in place does not run
    const again = document.createElement("script");
    again.src = script.src;
    document.body.append(again);
  }
  rest();
}
rest();

document.querySelector(".problems[tabindex]")?.focus();

// On a phone: keep the worker awake while somebody reads, offer a new version,
// ask the browser to keep what is written.
if (document.body.hasAttribute("data-field") && "serviceWorker" in navigator) {
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") fetch(base + "ping").catch(() => {});
  });
  const offer = (worker) => {
    const box = document.getElementById("update");
    box.hidden = false;
    box.querySelector("[data-update]").addEventListener("click", () => worker.postMessage("take over"));
  };
  navigator.serviceWorker.ready.then((registration) => {
    if (registration.waiting) offer(registration.waiting);
    registration.addEventListener("updatefound", () => {
      const fresh = registration.installing;
      fresh.addEventListener("statechange", () => {
        if (fresh.state === "installed" && navigator.serviceWorker.controller) offer(fresh);
      });
    });
  });
  let moved = false;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (!moved) { moved = true; location.reload(); }
  });
  navigator.storage?.persist?.().then((kept) => {
    const line = document.querySelector("[data-storage]");
    line.textContent = kept ? line.dataset.kept : line.dataset.may;
  });
}

// Swings that hang: the line is loud from its minute on, also on a page that
// was opened before. Nothing is asked for; the next page says the same.
for (const line of document.querySelectorAll("[data-until]")) {
  const left = Date.parse(line.dataset.until) - Date.now();
  if (left > 0 && left < 86400000) setTimeout(() => line.classList.add("late"), left);
}

// An outing in sight is asked for anew now and then, so that a wait that is over
// and what another device wrote down show by themselves. Nothing that is being
// typed is touched.
const now = document.getElementById("now");
if (now && now.hasAttribute("data-refresh")) {
  setInterval(async () => {
    const shown = document.getElementById("now");
    if (document.visibilityState !== "visible" || shown.contains(document.activeElement) && document.activeElement.matches("input, select, textarea")) return;
    try {
      const answer = await fetch(location.href);
      if (!answer.ok) return;
      const fresh = new DOMParser().parseFromString(await answer.text(), "text/html").getElementById("now");
      if (fresh && fresh.textContent !== shown.textContent) shown.replaceWith(fresh);
    } catch { /* the page stays as it is */ }
  }, 20000);
}
