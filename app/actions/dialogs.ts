/** Which dialog is open. Not part of the design, so not part of its history. */
import { create } from 'zustand'

export type DialogName =
  | 'new-box'
  | 'samples'
  | 'kept'
  | 'link'
  | 'all-actions'
  | 'from-label'
  | 'history'
  | 'row'
  | 'measure'
  | 'trouble'
  | null

interface Dialogs {
  readonly open: DialogName
  /** What went wrong, for the dialog that says so. */
  readonly trouble: { readonly title: string; readonly sentences: readonly string[] } | null
}

export const useDialogs = create<Dialogs>()(() => ({ open: null, trouble: null }))

export const openDialog = (open: DialogName): void => useDialogs.setState({ open })

export const sayTrouble = (title: string, sentences: readonly string[]): void =>
  useDialogs.setState({ open: 'trouble', trouble: { title, sentences } })
