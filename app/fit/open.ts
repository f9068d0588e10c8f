/** Is it asked what fits the box? Kept while another place is on screen. */
import { create } from 'zustand'

export const useFitOpen = create<{ readonly open: boolean }>()(() => ({ open: false }))
