import { expect, test } from 'vitest';
import { printNotation, readNotation } from '../../src/notation/index.ts';

/** Texts that are already as the printer writes them. */
test.each([
  [
    'a plain phrase',
    'title: A phrase\ntempo: 72\nkey: G major\nmetre: 4/4\nupbeat: 1\nS: D5 | B4 C5 D (C B4) | A*2! A*2 ||\n',
  ],
  ['ties and held notes', 'key: C major\nmetre: 4/4\nS: C5*4 | (= B4) C5*3 ||\nB: C3_ (C D) E*2 | C*4 ||\n'],
  [
    'a change of key and metre',
    'key: C major\nmetre: 4/4\nS: C5*4 |\n\nkey: 2 flats\nmetre: 3/2\nS: C5 D Eb ||\n',
  ],
  [
    'repeats and endings',
    'key: C major\nmetre: 4/4\nS: |: C5*4 |\n\nending: 1\nS: D5*4 :|\n\nending: 2\nS: C5*4 ||\n',
  ],
  [
    'a bar that is cut short',
    'key: C major\nmetre: 4/4\nS: C5*4 |\n\nbar: 2\nS: C5 D |\n\nbar: 3\nS: C5*4 ||\n',
  ],
])('%s', (_name, text) => {
  const { score, problems } = readNotation(text);
  expect(problems).toEqual([]);
  expect(printNotation(score)).toBe(text);
});
