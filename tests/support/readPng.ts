/**
 * A picture in PNG, decoded: 8 bits a channel, grey, RGB or RGBA, not interlaced (W3C PNG specification, 9.2 for
 * the five filters). Enough for what a renderer writes, and it refuses the rest.
 */
import { inflateSync } from 'node:zlib'

export interface Picture {
  readonly width: number
  readonly height: number
  /** Red, green and blue from 0 to 255, as seen on white paper. */
  pixel(x: number, y: number): readonly [red: number, green: number, blue: number]
}

const CHANNELS: Readonly<Record<number, number>> = { 0: 1, 2: 3, 6: 4 }

function paeth(left: number, up: number, corner: number): number {
  const guess = left + up - corner
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)]
  return a <= b && a <= c ? left : b <= c ? up : corner
}

export function readPng(file: Buffer): Picture {
  if (file.toString('latin1', 1, 4) !== 'PNG') throw new Error('This is not a PNG.')
  const data: Buffer[] = []
  for (let at = 8; at < file.length; ) {
    const length = file.readUInt32BE(at)
    if (file.toString('latin1', at + 4, at + 8) === 'IDAT') data.push(file.subarray(at + 8, at + 8 + length))
    at += length + 12
  }
  const [width, height] = [file.readUInt32BE(16), file.readUInt32BE(20)]
  const [depth, colourType, interlace] = [file[24], file[25] ?? -1, file[28]]
  const channels = CHANNELS[colourType]
  if (depth !== 8 || channels === undefined || interlace !== 0) {
    throw new Error(
      `A PNG of depth ${depth}, colour type ${colourType}, interlace ${interlace} is not read here.`,
    )
  }
  const raw = inflateSync(Buffer.concat(data))
  const stride = width * channels
  const out = new Uint8Array(stride * height)
  for (let y = 0; y < height; y++) {
    const filter = raw[y * (stride + 1)]
    for (let i = 0; i < stride; i++) {
      const left = i >= channels ? (out[y * stride + i - channels] ?? 0) : 0
      const up = y > 0 ? (out[(y - 1) * stride + i] ?? 0) : 0
      const corner = y > 0 && i >= channels ? (out[(y - 1) * stride + i - channels] ?? 0) : 0
      const predicted = [0, left, up, Math.floor((left + up) / 2), paeth(left, up, corner)][filter ?? 0] ?? 0
      out[y * stride + i] = (raw[y * (stride + 1) + 1 + i] ?? 0) + predicted
    }
  }
  return {
    width,
    height,
    pixel: (x, y) => {
      const at = (y * width + x) * channels
      const alpha = channels === 4 ? (out[at + 3] ?? 0) / 255 : 1
      const over = (channel: number) =>
        (out[at + (channels < 3 ? 0 : channel)] ?? 0) * alpha + 255 * (1 - alpha)
      return [over(0), over(1), over(2)]
    },
  }
}
