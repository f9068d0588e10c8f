/** A link that holds the whole design, to be copied. */
import { useEffect, useState } from 'react'
import { useDesign } from '../parts/calm.ts'
import { Dialog } from '../parts/Dialog.tsx'
import { type DesignLink, LONGEST_LINK, linkTo } from './link.ts'

export function LinkDialog({ onClose }: { readonly onClose: () => void }) {
  const design = useDesign()
  const [link, setLink] = useState<DesignLink | null>(null)
  const [told, setTold] = useState<string | null>(null)
  useEffect(() => {
    void linkTo(design, location.href).then(setLink)
  }, [design])
  const tooLong = link !== null && link.address.length > LONGEST_LINK
  const copy = async () => {
    if (!link) return
    try {
      await navigator.clipboard.writeText(link.address)
      setTold('Copied.')
    } catch {
      setTold('This browser does not let the page copy. Select the link above and copy it yourself.')
    }
  }
  return (
    <Dialog title="Link to this design" onClose={onClose}>
      <p className="soft">
        The link itself holds the whole design. Nothing is sent anywhere: whoever opens it has it, and nobody
        else.
        {link?.withoutPhotos && ' Photographs are too large for a link and are left out.'}
      </p>
      {tooLong ? (
        <p className="field-fault" role="alert">
          This design makes a link of {link.address.length.toLocaleString('en')} letters, too long to pass on
          safely. Save it to a file instead.
        </p>
      ) : (
        <>
          <textarea
            className="link-text"
            aria-label="The link"
            readOnly
            rows={5}
            value={link?.address ?? ''}
            onFocus={(event) => event.target.select()}
          />
          <div className="field-row">
            <button type="button" disabled={!link} onClick={() => void copy()}>
              Copy the link
            </button>
            <span role="status" className="small">
              {told}
            </span>
          </div>
        </>
      )}
    </Dialog>
  )
}
