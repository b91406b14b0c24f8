/**
 * A chorale of four beats a bar in the old triple proportion, in which its strong beats last twice as long: two bars of
 * three for one of four. Dances followed one another so, and many tunes are sung both ways. The masters' chorales are
 * nearly all of four beats; this is how more may be learnt from them.
 */
import { type Bar, byVoice, type Note, type Score, VOICES, type VoiceEvent } from '../../src/score/score.ts';
import { beatLength, type Ticks } from '../../src/score/time.ts';

/** Undefined where some bar has not four beats. */
export function inThree(score: Score): Score | undefined {
  if (score.bars.some(({ metre }) => metre.beats !== 4)) return undefined;
  const bars: Bar[] = [];
  const begins: Ticks[] = [];
  let at: Ticks = 0;
  for (const bar of score.bars) {
    begins.push(at);
    const end = at + stretched(bar, bar.offset + bar.duration) - stretched(bar, bar.offset);
    const full = 3 * beatLength(bar.metre);
    let offset = stretched(bar, bar.offset) % full;
    while (at < end) {
      const duration = Math.min(full - offset, end - at);
      const metre = { beats: 3, unit: bar.metre.unit };
      bars.push({ ...bar, index: bars.length, number: String(bars.length), at, duration, offset, metre });
      at += duration;
      offset = 0;
    }
  }
  const moved = (time: Ticks): Ticks => {
    const i = score.bars.findLastIndex((bar) => bar.at <= time);
    const bar = score.bars[i]!;
    return begins[i]! + stretched(bar, time - bar.at + bar.offset) - stretched(bar, bar.offset);
  };
  return {
    ...score,
    bars,
    voices: byVoice((voice) => score.voices[voice].flatMap((event) => divided(event, moved, bars))),
  };
}

/** How far into two bars of three what stands so far in a bar of four comes. */
function stretched({ metre }: Bar, into: Ticks): Ticks {
  const beat = beatLength(metre);
  const pairs = Math.floor(into / (2 * beat));
  const rest = into - pairs * 2 * beat;
  return 3 * pairs * beat + (rest <= beat ? 2 * rest : rest + beat);
}

/** An event at its new place, cut at the new barlines. */
function divided(event: VoiceEvent, moved: (time: Ticks) => Ticks, bars: readonly Bar[]): VoiceEvent[] {
  const from = moved(event.at);
  const until = moved(event.at + event.duration);
  const inner = bars.map(({ at }) => at).filter((at) => at > from && at < until);
  const edges = [from, ...inner, until];
  return edges.slice(1).map((end, i): VoiceEvent => {
    const place = { at: edges[i]!, duration: end - edges[i]! };
    return event.kind === 'note' && end < until ? { ...event, ...place, tied: true } : { ...event, ...place };
  });
}

/** The tune of a score with what moves between its beats left out, as a hymn book has it; the other voices as they are. */
export function withPlainTune(score: Score): Score {
  const tune = VOICES[0];
  const kept: VoiceEvent[] = [];
  for (const event of score.voices[tune]) {
    const bar = score.bars.findLast(({ at }) => at <= event.at)!;
    const before = kept.at(-1);
    const between = (event.at - bar.at + bar.offset) % beatLength(bar.metre) !== 0;
    if (between && before?.kind === 'note' && event.kind === 'note' && event.at > bar.at)
      kept[kept.length - 1] = longer(before, event);
    else kept.push(event);
  }
  return { ...score, voices: { ...score.voices, [tune]: kept } };
}

/** A note that goes on through the next, which is left out. */
function longer(note: Note, out: Note): Note {
  const { tied, fermata, ...rest } = note;
  return {
    ...rest,
    duration: note.duration + out.duration,
    ...(tied && out.tied ? { tied } : {}),
    ...(fermata || out.fermata ? { fermata: true } : {}),
  };
}
