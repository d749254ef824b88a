let wanted = false;
let lock: WakeLockSentinel | null = null;

/** Keeps the screen on while a job runs, where the browser allows it. */
export function staysAwake(on: boolean): void {
  wanted = on;
  if (!on) {
    lock?.release().catch(() => {});
    lock = null;
  } else if (lock === null || lock.released) hold();
}

function hold(): void {
  // Refused on a low battery, or where it is not allowed: the job goes on all the same.
  navigator.wakeLock?.request("screen").then(
    (got) => {
      lock = got;
      if (!wanted) staysAwake(false);
    },
    () => {},
  );
}

// The lock is lost whenever the page is hidden.
document.addEventListener("visibilitychange", () => {
  if (wanted && document.visibilityState === "visible") staysAwake(true);
});
