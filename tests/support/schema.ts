/** Validates MusicXML against the shared 4.0 schema with libxml2 (as WebAssembly). */
import { readFileSync } from 'node:fs';
import { validateXML } from 'xmllint-wasm';
import { SCHEMA } from './musicxml.ts';

let files: { schema: string; preload: { fileName: string; contents: string }[] } | undefined;

/** What the schema objects to in each file; an empty list where all are valid. */
export async function schemaFaults(documents: readonly { name: string; xml: string }[]): Promise<string[]> {
  // The schema imports two others by address; they lie beside it.
  files ??= {
    schema: readFileSync(`${SCHEMA}musicxml.xsd`, 'utf8').replace(
      /schemaLocation="[^"]*\/([^"/]+\.xsd)"/g,
      'schemaLocation="$1"',
    ),
    preload: ['xlink.xsd', 'xml.xsd'].map((fileName) => ({
      fileName,
      contents: readFileSync(SCHEMA + fileName, 'utf8'),
    })),
  };
  const result = await validateXML({
    xml: documents.map(({ name, xml }) => ({
      fileName: name,
      // libxml2 would look for the document type's file, which the schema replaces.
      contents: xml.replace(/<!DOCTYPE[^>]*>/, ''),
    })),
    schema: [{ fileName: 'musicxml.xsd', contents: files.schema }],
    preload: files.preload,
  });
  return result.valid ? [] : result.errors.map((error) => error.rawMessage);
}
