/** Stands before a design in the page's own address. */
export const LINK_MARK = '#design='
