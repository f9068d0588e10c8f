/** Whether a part is seen as it is cut, or under its sheets of paper. */
export interface ViewButtonsProps {
  readonly onPaper: boolean
  readonly onChange: (onPaper: boolean) => void
}

const VIEWS = [
  ['Part', false],
  ['On paper', true],
] as const

export function ViewButtons({ onPaper, onChange }: ViewButtonsProps) {
  return (
    <fieldset className="view-buttons" aria-label="View">
      {VIEWS.map(([name, value]) => (
        <button
          key={name}
          type="button"
          className="quiet"
          aria-pressed={onPaper === value}
          onClick={() => onChange(value)}
        >
          {name}
        </button>
      ))}
    </fieldset>
  )
}
