import { describe, expect, it } from 'vitest';
import {
  buildScore,
  type DraftBar,
  type DraftEvent,
  type DraftVoice,
  plainNumber,
} from '../../src/score/build.ts';
import { parsePitch } from '../../src/score/pitch.ts';
import type { Score, VoiceName } from '../../src/score/score.ts';
import { CROTCHET } from '../../src/score/time.ts';

/** `C5 C5*2 r ?`: crotchets, their lengths, rests and gaps; `_` ties on. */
function voice(text: string, closed = true): DraftVoice {
  const events = text.split(' ').map((item): DraftEvent => {
    const [, what = '', tie, length = '1'] = /^([^*_]+)(_?)(?:\*(\d+))?$/.exec(item) ?? [];
    const duration = Number(length) * CROTCHET;
    if (what === 'r' || what === '?') return { kind: what === 'r' ? 'rest' : 'gap', duration };
    return { kind: 'note', duration, pitch: parsePitch(what)!, tied: tie === '_' };
  });
  return { events, closed };
}

function bar(
  voices: Partial<Record<VoiceName, string | DraftVoice>>,
  more: Partial<DraftBar> = {},
): DraftBar {
  return {
    metre: { beats: 4, unit: 4 },
    key: { fifths: 0 },
    ...more,
    voices: Object.fromEntries(
      Object.entries(voices).map(([name, content]) => [
        name,
        typeof content === 'string' ? voice(content) : content,
      ]),
    ),
  };
}

const build = (...bars: DraftBar[]) => buildScore({ title: '', bars });
/** `0: 0+1 from 3`: number, beginning, length, offset, in crotchets, and `!S` for a misfit. */
const told = (score: Score) =>
  score.bars.map(
    (one) =>
      `${one.number}: ${one.at / CROTCHET}+${one.duration / CROTCHET}${one.offset ? ` from ${one.offset / CROTCHET}` : ''}${one.misfits.map((misfit) => ` !${misfit.voice}${misfit.written / CROTCHET}/${misfit.expected / CROTCHET}`).join('')}`,
  );
const sung = (score: Score, name: VoiceName) =>
  score.voices[name]
    .map((event) => `${event.kind === 'note' ? event.pitch.step : event.kind}${event.duration / CROTCHET}`)
    .join(' ');

describe('buildScore', () => {
  it('numbers bars from 1, an upbeat as 0', () => {
    expect(told(build(bar({ S: 'C5*4' }), bar({ S: 'C5*4' })))).toEqual(['1: 0+4', '2: 4+4']);
    expect(told(build(bar({ S: 'C5' }, { short: true }), bar({ S: 'C5*4' })))).toEqual([
      '0: 0+1 from 3',
      '1: 1+4',
    ]);
  });

  it('lets the last bar give the upbeat back', () => {
    const score = build(bar({ S: 'C5' }, { short: true }), bar({ S: 'C5*4' }), bar({ S: 'C5*3' }));
    expect(told(score)).toEqual(['0: 0+1 from 3', '1: 1+4', '2: 5+3']);
  });

  it('joins two short bars that make a full one, whether they say so or not', () => {
    const plain = build(bar({ S: 'C5*4' }), bar({ S: 'C5*3' }), bar({ S: 'C5' }), bar({ S: 'C5*4' }));
    expect(told(plain)).toEqual(['1: 0+4', '2: 4+3', '2: 7+1 from 3', '3: 8+4']);
    const declared = build(
      bar({ S: 'C5*4' }),
      bar({ S: 'C5*3' }, { short: 3 * CROTCHET }),
      bar({ S: 'C5' }, { short: CROTCHET }),
    );
    expect(told(declared)).toEqual(['1: 0+4', '2: 4+3', '2: 7+1 from 3']);
  });

  it('writes down a bar that is short in all voices, as short as it is', () => {
    const score = build(bar({ S: 'C5*4' }), bar({ S: 'C5*3', B: 'C3*3' }), bar({ S: 'C5*4' }));
    expect(told(score)).toEqual(['1: 0+4', '2: 4+3 !S3/4 !B3/4', '3: 7+4']);
  });

  it('fills a voice that is shorter than the others with a gap, and calls it a misfit only where its bar was closed', () => {
    const closed = build(bar({ S: 'C5*4', A: 'G4*3' }));
    expect(told(closed)).toEqual(['1: 0+4 !A3/4']);
    expect(sung(closed, 'A')).toBe('G3 gap1');
    const open = build(bar({ S: 'C5*4', A: voice('G4*3', false) }));
    expect(told(open)).toEqual(['1: 0+4']);
    expect(sung(open, 'A')).toBe('G3 gap1');
  });

  it('stretches a bar in which a voice has too much', () => {
    const score = build(bar({ S: 'C5*4', T: 'E4*4 E4' }), bar({ S: 'C5*4' }));
    expect(told(score)).toEqual(['1: 0+5 !T5/4', '2: 5+4']);
    expect(sung(score, 'S')).toBe('C4 gap1 C4');
  });

  it('gives a voice that wrote nothing a gap for each bar', () => {
    expect(sung(build(bar({ S: 'C5*4' }), bar({ S: 'C5*4' })), 'B')).toBe('gap4 gap4');
  });

  it('keeps ties that lead to the same pitch and drops the others', () => {
    const score = build(bar({ S: 'C5_*2 C5_*2', A: 'G4_*2 A4_*2' }), bar({ S: 'C5_ r C5 C5', A: 'A4*4' }));
    const ties = (name: VoiceName) =>
      score.voices[name].map((event) => event.kind === 'note' && event.tied === true);
    expect(ties('S')).toEqual([true, true, false, false, false, false]);
    expect(ties('A')).toEqual([false, true, false]);
  });

  it('places figures, and leaves out those behind the end of their bar', () => {
    const figures = [
      { into: CROTCHET, figures: ['6'] },
      { into: 4 * CROTCHET, figures: ['7'] },
    ];
    const score = build(bar({ S: 'C5' }, { short: true }), bar({ S: 'C5*4' }, { figures }));
    expect(score.figures).toEqual([{ at: 2 * CROTCHET, figures: ['6'] }]);
    expect('figures' in build(bar({ S: 'C5*4' }))).toBe(false);
  });

  it('takes printed numbers as they are and counts on from them', () => {
    const score = build(
      bar({ S: 'C5*4' }, { number: '12' }),
      bar({ S: 'C5*4' }),
      bar({ S: 'C5*4' }, { number: '14a' }),
      bar({ S: 'C5*4' }),
    );
    expect(score.bars.map((one) => one.number)).toEqual(['12', '13', '14a', '15']);
    expect(plainNumber([], 3 * CROTCHET)).toBe('0');
  });

  it('builds an empty score from nothing', () => {
    expect(build().bars).toEqual([]);
    expect(build().voices).toEqual({ S: [], A: [], T: [], B: [] });
  });
});
