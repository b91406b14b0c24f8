declare module 'subset-font' {
  /** The font with nothing but the signs of `text`. */
  export default function subsetFont(
    font: Buffer,
    text: string,
    options: { readonly targetFormat: 'woff2' },
  ): Promise<Buffer>;
}
