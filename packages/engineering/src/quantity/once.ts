/** Computes at the first call and remembers, so that rows about the same draw share it. */
export function once<T>(compute: () => T): () => T {
  let made: { readonly is: T } | undefined;
  return () => {
    made ??= { is: compute() };
    return made.is;
  };
}
