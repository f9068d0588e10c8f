/** What the command line stands on: where it writes, where it is, and how it ends. */

/** Everything the command line has of the world besides files; tests hand it their own. */
export interface Io {
  out(text: string): void
  err(text: string): void
  /** Folder that relative paths start from. */
  readonly cwd: string
}

/** How a command ends. When several files end differently, the greatest counts. */
export const EXIT = { fine: 0, stop: 1, badInput: 2 } as const

/** Trouble that the user can mend: its message is one or more whole sentences. Ends the command with 2. */
export class Trouble extends Error {
  override readonly name = 'Trouble'
}

/** The code of an error of the file system, such as `ENOENT`; empty for any other. */
export const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : ''

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'it may not be touched by this user',
  EPERM: 'it may not be touched by this user',
  EROFS: 'it lies on a disk that can only be read',
  ENOSPC: 'the disk is full',
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'something on the way to it is a file, not a folder',
  EISDIR: 'it is a folder, not a file',
  EEXIST: 'a file of that name lies there already',
  ENAMETOOLONG: 'the name is too long for this disk',
  EMFILE: 'too many files are open',
}

/** Why the file system refused, inside a sentence. */
export const reasonOf = (error: unknown): string =>
  REASONS[codeOf(error)] ?? (error instanceof Error ? error.message : String(error))

/** `1 file`, `3 files`. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`
