// Enlarges a drawing where it stands: buttons, keys, two fingers, a mouse that
// drags. Without it a link opens the drawing by itself.
"use strict";

(() => {
  const most = 12, stride = 1.5;

  function wire(figure) {
    const svg = figure.querySelector("svg"), steps = figure.querySelector(".steps");
    if (!svg || !steps || figure.dataset.drawing === "wired") return;
    figure.dataset.drawing = "wired";
    steps.hidden = false;
    const whole = svg.viewBox.baseVal, home = { x: whole.x, y: whole.y, width: whole.width, height: whole.height };
    let seen = { ...home };

    // show holds what is seen within the paper.
    const show = (x, y, width) => {
      width = Math.min(home.width, Math.max(home.width / most, width));
      const height = home.height * width / home.width;
      x = Math.min(Math.max(x, home.x), home.x + home.width - width);
      y = Math.min(Math.max(y, home.y), home.y + home.height - height);
      seen = { x, y, width, height };
      svg.setAttribute("viewBox", [x, y, width, height].map((n) => +n.toFixed(3)).join(" "));
      const large = width < home.width * 0.999;
      figure.classList.toggle("large", large);
      steps.querySelector(".pan").hidden = !large;
    };
    const fit = () => show(home.x, home.y, home.width);
    // around enlarges so that the place at (u, v), as shares of what is seen, stays.
    const around = (factor, u = 0.5, v = 0.5) => {
      const width = Math.min(home.width, Math.max(home.width / most, seen.width / factor));
      const change = width / seen.width;
      show(seen.x + seen.width * u * (1 - change), seen.y + seen.height * v * (1 - change), width);
    };
    const move = (u, v) => show(seen.x + u * seen.width, seen.y + v * seen.height, seen.width);
    const larger = () => figure.classList.contains("large");
    const acts = {
      in: () => around(stride), out: () => around(1 / stride), fit,
      left: () => move(-0.25, 0), right: () => move(0.25, 0), up: () => move(0, -0.25), down: () => move(0, 0.25),
    };
    steps.addEventListener("click", (event) => {
      const step = event.target.closest("[data-step]");
      if (step) acts[step.dataset.step]();
    });

    const keys = { "+": "in", "=": "in", "-": "out", "0": "fit", ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down" };
    figure.addEventListener("keydown", (event) => {
      const act = keys[event.key];
      if (!act || event.ctrlKey || event.metaKey || event.altKey || event.target.closest(".says")) return;
      if (event.key.startsWith("Arrow") && !larger()) return;
      event.preventDefault();
      acts[act]();
    });
    // A part that the keyboard comes to is brought into sight.
    svg.addEventListener("focusin", (event) => {
      if (!larger() || !event.target.matches(":focus-visible")) return;
      const part = event.target.getBoundingClientRect(), box = svg.getBoundingClientRect();
      const u = (part.left + part.width / 2 - box.left) / box.width, v = (part.top + part.height / 2 - box.top) / box.height;
      if (u < 0.05 || u > 0.95 || v < 0.05 || v > 0.95) move(u - 0.5, v - 0.5);
    });

    const share = (x, y) => {
      const box = svg.getBoundingClientRect();
      return [(x - box.left) / box.width, (y - box.top) / box.height];
    };
    let last = null, dragged = false;
    const touches = (event) => {
      const list = [...event.touches];
      const x = list.reduce((sum, t) => sum + t.clientX, 0) / list.length, y = list.reduce((sum, t) => sum + t.clientY, 0) / list.length;
      const apart = list.length > 1 ? Math.hypot(list[0].clientX - list[1].clientX, list[0].clientY - list[1].clientY) : 0;
      return { count: list.length, x, y, apart };
    };
    // Two fingers enlarge; one moves what is enlarged, and else the page.
    svg.addEventListener("touchstart", (event) => {
      if (event.touches.length > 1) event.preventDefault();
      last = touches(event);
    }, { passive: false });
    svg.addEventListener("touchmove", (event) => {
      if (!last || event.touches.length === 1 && !larger()) return;
      event.preventDefault();
      const now = touches(event);
      if (now.count === last.count) {
        const [u, v] = share(now.x, now.y), [a, b] = share(last.x, last.y);
        move(a - u, b - v);
        if (now.apart > 0 && last.apart > 0) around(now.apart / last.apart, u, v);
      }
      last = now;
    }, { passive: false });
    svg.addEventListener("touchend", (event) => { last = event.touches.length ? touches(event) : null; });
    svg.addEventListener("touchcancel", () => { last = null; });

    svg.addEventListener("pointerdown", (event) => {
      dragged = false;
      if (event.pointerType !== "mouse" || event.button !== 0 || !larger()) return;
      let at = share(event.clientX, event.clientY);
      const drag = (e) => {
        const to = share(e.clientX, e.clientY);
        if (!dragged && Math.hypot(e.clientX - event.clientX, e.clientY - event.clientY) < 4) return;
        dragged = true;
        move(at[0] - to[0], at[1] - to[1]);
        at = to;
      };
      const end = () => { removeEventListener("pointermove", drag); removeEventListener("pointerup", end); };
      addEventListener("pointermove", drag);
      addEventListener("pointerup", end);
    });
    svg.addEventListener("dragstart", (event) => event.preventDefault());
    svg.addEventListener("click", (event) => { if (dragged) event.preventDefault(); }, true);
    svg.addEventListener("wheel", (event) => {
      if (!event.ctrlKey) return; // two fingers on a pad
      event.preventDefault();
      around(Math.exp(-event.deltaY / 100), ...share(event.clientX, event.clientY));
    }, { passive: false });
    // Paper takes the whole drawing.
    addEventListener("beforeprint", fit);
  }

  document.querySelectorAll("[data-drawing]").forEach(wire);
})();
