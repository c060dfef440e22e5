/** A promise that a test keeps or breaks when it likes. */
export interface Promised<T> {
  readonly promise: Promise<T>;
  resolve(value: T): void;
  reject(error: unknown): void;
}

export function promised<T>(): Promised<T> {
  let ends: Omit<Promised<T>, "promise"> | undefined;
  const promise = new Promise<T>((resolve, reject) => {
    ends = { resolve, reject };
  });
  return { promise, resolve: (value) => ends?.resolve(value), reject: (error) => ends?.reject(error) };
}
