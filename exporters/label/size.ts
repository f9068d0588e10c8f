/** How large the label for the inside of the box is, mm: it fits a small box, and its code can be read. */
export const LABEL_SIZE = { width: 106, height: 60 } as const
