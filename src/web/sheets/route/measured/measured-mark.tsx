/** A size someone took, not one worked out. */
export function MeasuredMark() {
  return (
    <svg className="mark" viewBox="0 0 15 14" aria-hidden="true">
      <path
        d="M1.5 1.5h11v11h-11zM4 7l2.6 2.8L14.5.5"
        fill="none"
        stroke="currentColor"
        strokeWidth="1.3"
      />
    </svg>
  )
}
