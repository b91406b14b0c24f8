import { parseMidi } from 'midi-file';
import { describe, expect, it } from 'vitest';
import { writeMidi } from '../../src/musicxml/index.ts';
import { readNotation } from '../../src/notation/index.ts';

function written(text: string) {
  return parseMidi(writeMidi(readNotation(text).score));
}

/** `60@0-480`: key number, from and until in MIDI ticks. */
function sounds(track: ReturnType<typeof parseMidi>['tracks'][number]): string[] {
  const open = new Map<number, number>();
  const out: string[] = [];
  let at = 0;
  for (const event of track) {
    at += event.deltaTime;
    if (event.type === 'noteOn') {
      expect(open.has(event.noteNumber)).toBe(false);
      open.set(event.noteNumber, at);
    } else if (event.type === 'noteOff') {
      out.push(`${event.noteNumber}@${open.get(event.noteNumber)}-${at}`);
      open.delete(event.noteNumber);
    }
  }
  expect(open.size).toBe(0);
  return out;
}

describe('MIDI', () => {
  it('has a track for tempo, metre and key and one for each voice', () => {
    const midi = written('title: Été\nkey: Eb minor\nmetre: 6/8\ntempo: 60\n\nS: Eb5*3 Gb4*3 |\nB: Eb3*6 |');
    expect(midi.header).toMatchObject({ format: 1, numTracks: 5, ticksPerBeat: 480 });
    const [leader] = midi.tracks;
    expect(leader).toContainEqual(
      expect.objectContaining({ type: 'setTempo', microsecondsPerBeat: 1_000_000 }),
    );
    expect(leader).toContainEqual(expect.objectContaining({ type: 'keySignature', key: -6, scale: 1 }));
    expect(leader).toContainEqual(
      expect.objectContaining({ type: 'timeSignature', numerator: 6, denominator: 8, metronome: 36 }),
    );
    expect(sounds(midi.tracks[1]!)).toEqual(['75@0-720', '66@720-1440']);
    expect(sounds(midi.tracks[2]!)).toEqual([]);
    expect(sounds(midi.tracks[4]!)).toEqual(['51@0-1440']);
  });

  it('changes the tempo at the barline where the score does', () => {
    const { tracks } = parseMidi(
      writeMidi(
        readNotation('metre: 3/4\nS: C5*3 |\ntempo: 90\nS: D5*3 | E5*3 |\ntempo: 60\nS: F5*3 |').score,
        {
          tempo: 80,
        },
      ),
    );
    let at = 0;
    const tempos = tracks[0]!.flatMap((event) => {
      at += event.deltaTime;
      return event.type === 'setTempo' ? [[at, event.microsecondsPerBeat]] : [];
    });
    expect(tempos).toEqual([
      [0, 750_000],
      [1440, 666_667],
      [4320, 1_000_000],
    ]);
  });

  it.each([1, 2, 4, 8, 16, 32])('writes a lower figure of %i', (unit) => {
    const midi = written(`metre: 3/${unit}\n\nS: C5*3 |`);
    expect(midi.tracks[0]).toContainEqual(
      expect.objectContaining({ type: 'timeSignature', denominator: unit }),
    );
  });

  it('sounds tied notes as one, repeated notes as two, and a triplet in its place', () => {
    const midi = written('metre: 4/4\n\nS: C5 C5 C5*2_ | C5 (D5 E5 F5) r*2 |');
    expect(sounds(midi.tracks[1]!)).toEqual([
      '72@0-480',
      '72@480-960',
      '72@960-2400',
      '74@2400-2560',
      '76@2560-2720',
      '77@2720-2880',
    ]);
  });

  it('counts finer where it must: seven notes in a beat', () => {
    const midi = written('metre: 2/4\n\nS: (C5 D5 E5 F5 G5 A5 B5) C6 |');
    expect(midi.header.ticksPerBeat).toBe(10_080);
    expect(sounds(midi.tracks[1]!).at(-1)).toBe('84@10080-20160');
  });
});
