/** What each shared dialect should be read as, and what becomes of it. */
import { readFileSync } from 'node:fs';
import * as z from 'zod';
import { readMusicXml } from '../../src/musicxml/index.ts';
import { midiNumber } from '../../src/score/pitch.ts';
import { type ByVoice, byVoice, type Score, VOICES } from '../../src/score/score.ts';
import { textureOf } from '../../src/score/texture.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { SHARED } from './musicxml.ts';

/** Onset, MIDI note, length, fermata; in crotchets. */
const sung = z.tuple([z.number(), z.number(), z.number(), z.boolean()]);
const truthSchema = z.record(
  z.string(),
  z.object({
    /** To be read, to be read with a remark (the file says something else than it means), to be refused. */
    expect: z.enum(['ok', 'remark', 'refuse']),
    voices: z.object({ S: z.array(sung), A: z.array(sung), T: z.array(sung), B: z.array(sung) }),
  }),
);

let truth: z.infer<typeof truthSchema> | undefined;

/** `as written`, or what differs. */
export function readDialect(file: string, bytes: Uint8Array): string {
  truth ??= truthSchema.parse(JSON.parse(readFileSync(`${SHARED}dialects/truth.json`, 'utf8')));
  const wanted = truth[file];
  if (wanted === undefined) return 'of which nothing is known';
  const reading = readMusicXml(bytes);
  if (wanted.expect === 'refuse') return reading.ok ? 'read, but it should be refused' : 'as written';
  if (!reading.ok) return `refused: ${reading.message}`;
  if (wanted.expect === 'remark')
    return reading.score.remarks.length > 0 ? 'as written' : 'read without a remark';
  const found = fromFirst(sungIn(reading.score));
  const right = fromFirst(wanted.voices);
  const wrong = VOICES.filter((voice) => JSON.stringify(found[voice]) !== JSON.stringify(right[voice]));
  return wrong.length === 0 ? 'as written' : `read otherwise: ${wrong.join(', ')}`;
}

type Sung = ByVoice<readonly z.infer<typeof sung>[]>;

function sungIn(score: Score): Sung {
  const { tones } = textureOf(score);
  return byVoice((voice) =>
    tones[voice].map((tone) => [
      tone.at / CROTCHET,
      midiNumber(tone.pitch),
      (tone.until - tone.at) / CROTCHET,
      tone.notes.some((note) => note.fermata === true),
    ]),
  );
}

/** Empty time before the first note of all is paper, not music. */
function fromFirst(voices: Sung): Sung {
  const first = Math.min(...VOICES.flatMap((voice) => voices[voice].map(([at]) => at)));
  return byVoice((voice) => voices[voice].map(([at, ...rest]) => [at - first, ...rest]));
}
