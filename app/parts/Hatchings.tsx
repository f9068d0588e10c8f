/** Hatchings for every little scale on the page. */
export function Hatchings() {
  return (
    <svg className="unseen" aria-hidden="true" width="0" height="0">
      <defs>
        <pattern id="crossed" width="5" height="5" patternUnits="userSpaceOnUse">
          <path className="hatch-stop" d="M0 5 5 0M0 0l5 5" />
        </pattern>
        <pattern id="slanted" width="4" height="6" patternUnits="userSpaceOnUse">
          <path className="hatch-care" d="M0 6 4 0" />
        </pattern>
      </defs>
    </svg>
  )
}
