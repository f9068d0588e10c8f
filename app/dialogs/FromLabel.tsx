/** A design opened from the code on the label in its box: the text that a telephone read, typed or pasted. */
import { useId, useState } from 'react'
import { openLabelText } from '../actions/files.ts'
import { Dialog } from '../parts/Dialog.tsx'

export function FromLabel({ onClose }: { readonly onClose: () => void }) {
  const own = useId()
  const [text, setText] = useState('')
  const [faults, setFaults] = useState<readonly string[]>([])
  const open = async () => {
    const wrong = await openLabelText(text)
    if (wrong === null) onClose()
    else setFaults(wrong.slice(0, 5))
  }
  return (
    <Dialog title="Open from a label" onClose={onClose}>
      <form
        className="from-label"
        onSubmit={(event) => {
          event.preventDefault()
          void open()
        }}
      >
        <label htmlFor={own}>The text of the code on the label</label>
        <textarea
          id={own}
          rows={6}
          spellCheck={false}
          autoComplete="off"
          value={text}
          aria-describedby={`${own}-help`}
          aria-invalid={faults.length > 0}
          onChange={(event) => setText(event.target.value)}
        />
        <p className="soft small" id={`${own}-help`}>
          Read the code with a telephone and send yourself its text, which begins with LIDWRIGHT. What is on
          the bench is replaced; undo brings it back.
        </p>
        {faults.map((fault) => (
          <p key={fault} className="field-fault" role="alert">
            {fault}
          </p>
        ))}
        <button type="submit" className="main" disabled={text.trim() === ''}>
          Open the design
        </button>
      </form>
    </Dialog>
  )
}
