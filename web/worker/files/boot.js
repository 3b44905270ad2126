// Puts the worker on this device, then shows the page that was asked for.
"use strict";

const state = document.getElementById("state");
const here = new URL(".", document.currentScript.src);

async function install() {
  if (!("serviceWorker" in navigator)) {
    state.textContent = "This browser cannot keep the app on this device, or the address is not a secure one (https or localhost).";
    return;
  }
  if (navigator.serviceWorker.controller) { location.replace(here); return; }
  state.textContent = "The app is being put on this device. This happens once and needs a signal.";
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
  try {
    const registration = await navigator.serviceWorker.register(new URL("worker.js", here), { scope: here.pathname, updateViaCache: "none" });
    const fresh = registration.installing;
    fresh?.addEventListener("statechange", () => {
      if (fresh.state === "redundant") {
        state.textContent = "The app could not be started on this device. Nothing was kept; reload to try again.";
      }
    });
  } catch (error) {
    state.textContent = "The app could not be put on this device: " + error.message;
  }
}
install();
