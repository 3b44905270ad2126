// Takes angles with the tilt sensor of a phone. Where there is none, or nobody
// allows it, the page stays as it is without this script.
"use strict";

(() => {
  const panel = document.getElementById("tilt");
  if (!panel || !("DeviceOrientationEvent" in window)) return;
  const parts = document.querySelectorAll("[data-tilt]");
  const show = (yes) => { for (const part of parts) part.hidden = !yes; };
  const mayAsk = typeof DeviceOrientationEvent.requestPermission === "function";

  // The long edge rises by beta, whichever way the screen faces: the third row
  // of the rotation matrix in the Device Orientation specification of the W3C
  // has sin(beta) for the y axis of the device.
  const degrees = 180 / Math.PI;
  const rise = (event) => Math.asin(Math.sin(event.beta / degrees)) * degrees;

  // Only a sensor that speaks is offered. Where it may speak after a question
  // alone, a device to be touched is taken for one that has it; the question is
  // put by a tap.
  if (mayAsk && navigator.maxTouchPoints > 0) show(true);
  const first = (event) => {
    if (event.beta === null) return;
    removeEventListener("deviceorientation", first);
    show(true);
  };
  addEventListener("deviceorientation", first);

  const allowed = async () => {
    if (!mayAsk) return true;
    try { return await DeviceOrientationEvent.requestPermission() === "granted"; } catch { return false; }
  };

  // One second to come to rest after the tap, one second of readings.
  const rest = 1000, span = 1000, fewest = 5;
  const wait = (ms) => new Promise((done) => setTimeout(done, ms));
  const take = async () => {
    await wait(rest);
    const seen = [];
    const note = (event) => { if (event.beta !== null) seen.push(rise(event)); };
    addEventListener("deviceorientation", note);
    await wait(span);
    removeEventListener("deviceorientation", note);
    if (seen.length < fewest) return null;
    const mean = seen.reduce((sum, x) => sum + x, 0) / seen.length;
    const sd = Math.sqrt(seen.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (seen.length - 1));
    return { mean, sd };
  };

  // A hand that holds still scatters by less than this (house); the eye along
  // the edge is not truer than that (house).
  const shaky = 2, least = 0.2;
  const busy = new Set();
  const taking = async (status, then) => {
    if (busy.size) return;
    busy.add(status);
    try {
      if (!await allowed()) { show(false); return; }
      status.textContent = panel.dataset.busy;
      const taken = await take();
      if (!taken) { show(false); return; }
      if (taken.sd > shaky) { status.textContent = panel.dataset.shaky; return; }
      then(taken);
    } finally {
      busy.delete(status);
    }
  };

  // Turned end for end the edge rises the other way while the error of the zero
  // stays: half the sum of both readings is that error.
  const key = "tilt zero";
  const kept = () => { try { return JSON.parse(localStorage.getItem(key) || "null"); } catch { return null; } };
  const keep = (zero) => { try { localStorage.setItem(key, JSON.stringify(zero)); } catch { /* for this page alone */ } };
  let zero = kept();
  let half = {};
  const status = panel.querySelector("[data-status]");
  const told = () => { if (zero) status.textContent = panel.dataset.zeroed + " " + zero.mean.toFixed(1); };
  told();
  for (const button of panel.querySelectorAll("[data-tilt-zero]")) {
    button.addEventListener("click", () => taking(status, (taken) => {
      half[button.dataset.tiltZero] = taken;
      status.textContent = panel.dataset.taken;
      const { first, second } = half;
      if (!first || !second) return;
      zero = { mean: (first.mean + second.mean) / 2, sd: Math.hypot(first.sd, second.sd) / 2 };
      half = {};
      keep(zero);
      told();
    }));
  }

  for (const button of document.querySelectorAll("[data-tilt-for]")) {
    const line = button.parentElement.querySelector("[data-status]");
    button.addEventListener("click", () => taking(line, (taken) => {
      const field = document.getElementById(button.dataset.tiltFor);
      const angle = (taken.mean - (zero ? zero.mean : 0)).toFixed(1);
      const spread = zero ? " ±" + Math.max(least, Math.hypot(taken.sd, zero.sd)).toFixed(1) + " deg" : "";
      field.value = angle + " deg" + spread + " clinometer";
      field.size = Math.max(5, field.value.length);
      line.textContent = panel.dataset.taken;
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }));
  }
})();
