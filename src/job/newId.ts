/** A name for a new job. */
export function newId(): string {
  // Outside a secure context there is no randomUUID.
  return (
    crypto.randomUUID?.() ??
    Array.from(crypto.getRandomValues(new Uint32Array(4)), (word) => word.toString(36)).join('-')
  );
}
