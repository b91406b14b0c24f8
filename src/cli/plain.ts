/**
 * What a file says of itself, for a terminal: a title may hold signs that move the cursor, change colours or the
 * window's name. They are shown as the pictures that Unicode has for them; a line's end stays.
 */
export function plain(text: string): string {
  return text.replace(/\p{Cc}/gu, (sign) => {
    if (sign === '\n') return sign;
    const code = sign.charCodeAt(0);
    return code < 0x20 ? String.fromCharCode(0x2400 + code) : '\ufffd';
  });
}
