/** The sheets that are shown as web pages, each whole in one file: to be sent to one pupil, opened and printed there. */

import academico from '@vexflow-fonts/academico/academico.woff2?url';
import bravura from '@vexflow-fonts/bravura/bravura.woff2?url';
import { strToU8, zipSync } from 'fflate';
import { fileName, saveFile } from '../files/save.ts';

/** One sheet is saved as a page, several as a zip of pages. */
export async function saveSheetPages(stack: string): Promise<void> {
  const style = await styleOfSheets();
  const pages = [...document.querySelectorAll<HTMLElement>('article.sheet')].map((sheet) => ({
    name: fileName(sheet.dataset.name ?? 'sheet', 'html'),
    page: pageOf(sheet, style),
  }));
  const [only] = pages;
  if (only === undefined) return;
  if (pages.length === 1) saveFile(only.name, only.page, 'text/html');
  else {
    const files = Object.fromEntries(pages.map(({ name, page }) => [name, strToU8(page)]));
    saveFile(fileName(`${stack} sheets`, 'zip'), zipSync(files, { level: 6 }), 'application/zip');
  }
}

function pageOf(sheet: HTMLElement, style: string): string {
  const title = document.createElement('title');
  title.textContent = sheet.dataset.name ?? 'Sheet';
  return `<!doctype html>
<html lang="en-GB"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
${title.outerHTML}
<style>${style}</style></head>
<body>${sheet.outerHTML}</body></html>
`;
}

/** All rules of this page, with the fonts in them: nothing is fetched from anywhere when the file is opened. */
async function styleOfSheets(): Promise<string> {
  const rules = [...document.styleSheets]
    .flatMap((sheet) => [...sheet.cssRules])
    .filter((rule) => !(rule instanceof CSSFontFaceRule))
    .map(({ cssText }) => cssText);
  const fonts = await Promise.all([fontFace('Academico', academico), fontFace('Bravura', bravura)]);
  // Nothing in a style sheet may end it early.
  return [...fonts, ...rules].join('\n').replaceAll('</', '<\\/');
}

async function fontFace(family: string, address: string): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(address)).arrayBuffer());
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return `@font-face { font-family: ${family}; src: url("data:font/woff2;base64,${btoa(text)}") format("woff2"); }`;
}
