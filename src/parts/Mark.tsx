/** Return air: a filled circle. Supply air: an open square. The same marks as on every drawing. */
export function Mark({ of }: { of: 'entering' | 'leaving' }) {
  return (
    <svg class="mark" viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
      {of === 'entering' ? (
        <circle class="mark-return" cx="6" cy="6" r="6" />
      ) : (
        <rect class="mark-supply" x="1" y="1" width="10" height="10" />
      )}
    </svg>
  );
}
