const WORKER = "service-worker.js";

/** Lets the page open without a network next time. Where the browser has no such thing, or refuses, nothing is lost. */
export function keepForOffline(): void {
  if (!("serviceWorker" in navigator) || !window.isSecureContext) return;
  const register = () => navigator.serviceWorker.register(WORKER).catch(() => undefined);
  if (document.readyState === "complete") void register();
  else window.addEventListener("load", () => void register());
}
