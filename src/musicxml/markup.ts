/** XML as text, written piece by piece. */

/** Attributes in the order to be written; undefined ones are left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Text made fit for XML 1.0: characters that it cannot hold are dropped, the five special ones replaced. */
function escaped(text: string): string {
  return text
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '')
    .replace(/[\p{Cc}\ufffe\uffff]/gu, (sign) => ('\t\n\r'.includes(sign) ? sign : ''))
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

/** `element('step', {}, 'C')` is `<step>C</step>`; without content it closes itself. Content is XML already. */
export function element(name: string, attributes: Attributes = {}, ...content: readonly string[]): string {
  let open = `<${name}`;
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) open += ` ${key}="${escaped(String(value))}"`;
  }
  const inside = content.join('');
  return inside === '' ? `${open}/>` : `${open}>${inside}</${name}>`;
}

/** An element that holds text. */
export function textElement(name: string, text: string | number, attributes: Attributes = {}): string {
  const inside = escaped(String(text));
  return inside === ''
    ? `${element(name, attributes).slice(0, -2)}></${name}>`
    : element(name, attributes, inside);
}
