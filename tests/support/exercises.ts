/** The exercises in fixtures/, by name. */
import { readFileSync } from 'node:fs';

/** An exercise's text, without its ending: `exerciseText('kite-hill')`. */
export function exerciseText(name: string): string {
  return readFileSync(new URL(`../../fixtures/exercises/${name}.txt`, import.meta.url), 'utf8');
}
