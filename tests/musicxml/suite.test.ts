import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readMusicXml } from '../../src/musicxml/index.ts';
import { printPitch } from '../../src/score/pitch.ts';
import { VOICES } from '../../src/score/score.ts';
import { crotchets, printMetre } from '../../src/score/time.ts';
import { haveSuite, length, SUITE, spell, suiteSource } from '../support/musicxml.ts';
import { SUITE_CASES, type SuiteCase } from './suite.ts';

describe.skipIf(!haveSuite)(
  'the public MusicXML suite (skipped where ../shared/musicxml-suite is absent)',
  () => {
    it('has a case for every file', () => {
      const files = readdirSync(SUITE).filter((file) => /\.(xml|musicxml|mxl)$/.test(file));
      expect(SUITE_CASES.map((one) => one.file).sort()).toEqual(files.sort());
    });

    it.each(SUITE_CASES)('$file: $shows', (one: SuiteCase) => {
      const source = suiteSource(one.file);
      const [first] = source.parts;
      const bars = first!.bars;
      if (one.notes)
        expect(source.parts.slice(0, one.notes.length).map((part) => spell(part))).toEqual(one.notes);
      if (one.metres !== undefined) {
        const metres = bars.flatMap((bar, i) =>
          bar.metres.map((m) => `${i}:${m.metre === 'free' ? 'free' : printMetre(m.metre)}`),
        );
        expect(metres.join(' ')).toBe(one.metres);
      }
      if (one.keys !== undefined) {
        const keys = bars.flatMap((bar, i) => bar.keys.map((k) => `${i}@${crotchets(k.at)}:${k.key.fifths}`));
        expect(keys.join(' ')).toBe(one.keys);
      }
      if (one.bars !== undefined) {
        const told = bars.map((bar) => {
          const ending = bar.ending === undefined ? '' : `e${bar.ending}`;
          const repeats = bar.repeats.map((r) => r.direction[0] + length(r.at)).join('');
          return `${bar.number}${bar.implicit ? 'i' : ''}:${length(bar.length)}${ending}${repeats}`;
        });
        expect(told.join(' ')).toBe(one.bars);
      }
      if (one.title !== undefined) expect(source.title).toBe(one.title);
      if (one.tempo !== undefined) expect(bars[0]!.tempos[0]?.tempo).toBe(one.tempo);
      if (one.partNames !== undefined)
        expect(source.parts.map((part) => part.name).join('; ')).toBe(one.partNames);
      if (one.lyrics !== undefined) {
        const notes = bars.flatMap((bar) => bar.notes);
        const verses = Math.max(...notes.map((note) => note.lyrics?.length ?? 0));
        const sung = Array.from({ length: verses }, (_, verse) =>
          notes.flatMap((note) => note.lyrics?.[verse] ?? []).join(' '),
        );
        expect(sung.join(' / ')).toBe(one.lyrics);
      }

      const read = readMusicXml(readFileSync(SUITE + one.file));
      if (one.verdict instanceof RegExp) {
        expect(read.ok).toBe(false);
        if (!read.ok) expect(read.message).toMatch(one.verdict);
      } else {
        if (!read.ok) throw new Error(read.message);
        const { score } = read;
        for (const voice of VOICES) {
          const pitches = score.voices[voice].flatMap((event) =>
            event.kind === 'note' ? [printPitch(event.pitch)] : [],
          );
          expect(pitches.join(' '), voice).toBe(one.verdict[voice]);
        }
      }
    });
  },
);
