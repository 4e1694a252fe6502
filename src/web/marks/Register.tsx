/** A register mark of the proof sheet; it carries no meaning. */
export function Register({ corner }: { readonly corner: 'first' | 'last' }) {
  return (
    <svg
      className={`register ${corner}`}
      viewBox="0 0 18 18"
      width="18"
      height="18"
      aria-hidden="true"
    >
      <circle cx="9" cy="9" r="5" />
      <path d="M9 0v18M0 9h18" />
    </svg>
  );
}

/** The strip of the four process inks at the edge of the sheet. */
export function Inks() {
  return (
    <svg className="inks" viewBox="0 0 6 64" width="6" height="64" aria-hidden="true">
      <rect className="cyan" width="6" height="16" />
      <rect className="magenta" y="16" width="6" height="16" />
      <rect className="yellow" y="32" width="6" height="16" />
      <rect className="black" y="48" width="6" height="16" />
    </svg>
  );
}
