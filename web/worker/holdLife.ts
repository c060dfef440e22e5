/**
 * Holds a lock under the worker's own name for as long as it lives: the browser lets go of it when the worker is gone, however
 * it went, and whoever waits for the lock knows. False where the browser has no locks.
 */
export function holdLife(): Promise<boolean> {
  return new Promise((resolve) => {
    if (!navigator.locks) return resolve(false);
    const held = navigator.locks.request(self.name, () => {
      resolve(true);
      return new Promise<never>(() => {});
    });
    held.catch(() => resolve(false));
  });
}
