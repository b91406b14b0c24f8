import { describe, expect, it } from 'vitest';
import { CHORALE } from '../../src/profiles/profile.ts';
import { reviewScore } from '../../src/review/review.ts';
import { dividedVoice } from '../../src/rules/divided-voice.ts';
import { completed } from '../../src/rules/example.ts';
import type { Example } from '../../src/rules/rule.ts';
import { parsePitch } from '../../src/score/pitch.ts';
import { type Score, VOICES } from '../../src/score/score.ts';
import { CROTCHET } from '../../src/score/time.ts';
import { check, pinned, scoreOf } from '../support/rules.ts';

const BARS = `key: G major
metre: 4/4
upbeat: 1
S: D5 | B4 C5 B4 A4 | G4*3! |
A: G4 | G4 G4 G4 F#4 | D4*3! |
T: B3 | D4 E4 D4 C4 | B3*3! |
B: G3 | G3 C3 D3 D3 | G2*3! |`;

/** These bars with notes too many. */
function withNotes(beside: NonNullable<Example['beside']>): Score {
  return completed(scoreOf(BARS), { text: BARS, caption: '', beside });
}

function findings(score: Score) {
  return check(dividedVoice, score).map((one) => ({ ...pinned(score, one), says: one.message }));
}

describe('divided-voice', () => {
  it('finds a second note in a voice, by bar and beat', () => {
    expect(findings(withNotes([{ voice: 'A', note: 3, pitch: parsePitch('D4')! }]))).toEqual([
      {
        bar: '1',
        beat: '3',
        voices: 'A',
        notes: 'A:G4',
        says: 'Alto has two notes at once: G4, and D4 beside it. Everything else here is judged as if G4 were the only one.',
      },
    ]);
  });

  it('finds several in the upbeat and in the last chord, in order of time', () => {
    const places = findings(
      withNotes([
        { voice: 'S', note: 5, pitch: parsePitch('D4')! },
        { voice: 'S', note: 5, pitch: parsePitch('B3')! },
        { voice: 'B', note: 0, pitch: parsePitch('D3')! },
      ]),
    );
    expect(places.map(({ bar, beat, voices, says }) => [bar, beat, voices, says.slice(0, 55)])).toEqual([
      ['0', '4', 'B', 'Bass has two notes at once: G3, and D3 beside it. Every'],
      ['2', '1', 'S', 'Soprano has several notes at once: G4, and D4 and B3 be'],
    ]);
  });

  it('gives the beat of a note that begins while another is held', () => {
    const score = scoreOf(BARS);
    const held = {
      ...score,
      voices: {
        ...score.voices,
        T: score.voices.T.map((event) =>
          event.kind === 'note' && event.at === CROTCHET * 5
            ? { ...event, beside: [{ pitch: parsePitch('D4')!, into: CROTCHET, duration: CROTCHET }] }
            : event,
        ),
      },
    };
    expect(findings(held).map(({ bar, beat }) => `${bar}.${beat}`)).toEqual(['2.2']);
  });

  it('asks and does not blame, and judges the rest as if the note were not there', () => {
    const { findings: alone } = reviewScore(scoreOf(BARS), CHORALE);
    const { findings: divided } = reviewScore(
      withNotes([{ voice: 'T', note: 2, pitch: parsePitch('G3')! }]),
      CHORALE,
    );
    const own = divided.filter(({ rule }) => rule.id === 'divided-voice');
    expect(own.map(({ severity }) => severity)).toEqual(['query']);
    expect(divided.filter((one) => !own.includes(one)).map(({ message }) => message)).toEqual(
      alone.map(({ message }) => message),
    );
  });

  it('leaves alone voices with a note at a time, unisons and seconds between two of them', () => {
    expect(findings(scoreOf(BARS))).toEqual([]);
    const near = BARS.replace('A: G4 | G4', 'A: D5 | A4');
    expect(findings(scoreOf(near))).toEqual([]);
    expect(VOICES.every((voice) => scoreOf(near).voices[voice].length > 0)).toBe(true);
  });
});
