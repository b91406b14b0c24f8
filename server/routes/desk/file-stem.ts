/** A name that is safe as a file's on any system. */
export function fileStem(name: string): string {
  return name.replaceAll(/[^\p{L}\p{N}_-]+/gu, '-').slice(0, 60) || 'stack';
}
