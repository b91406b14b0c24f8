/** Hands a file to the person. Made in the page; nothing is sent anywhere. */
export function saveFile(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser reads the blob after the click; a minute is long for that.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** A title as a file name that every system takes. */
export function fileName(title: string, ending: string): string {
  const plain = title
    .normalize('NFKD')
    .replaceAll(/[^\p{L}\p{N} _-]+/gu, '')
    .trim()
    .replaceAll(/\s+/g, '-')
    .slice(0, 60);
  return `${plain === '' ? 'exercise' : plain}.${ending}`;
}
