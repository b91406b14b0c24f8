/** From a {@link Score} back to the bars it was built from, so that a change can be made and the score built again. */
import type { DraftBar, DraftEvent, DraftScore, DraftVoice } from '../score/build.ts';
import { type Bar, type Score, VOICES, type VoiceEvent, type VoiceName } from '../score/score.ts';
import { barLength, type Metre, type Ticks } from '../score/time.ts';

/** The draft that {@link buildScore} turns into this score again, misfits and all. */
export function draftOf(score: Score): DraftScore {
  const cursors = { S: 0, A: 0, T: 0, B: 0 };
  return {
    title: score.title,
    ...(score.tempo === undefined ? {} : { tempo: score.tempo }),
    bars: score.bars.map((bar) => draftBar(score, bar, cursors)),
    ...(score.figures === undefined ? {} : { figures: score.figures }),
    remarks: score.remarks,
  };
}

function draftBar(score: Score, bar: Bar, cursors: Record<VoiceName, number>): DraftBar {
  const voices: Partial<Record<VoiceName, DraftVoice>> = {};
  for (const voice of VOICES) {
    const events: DraftEvent[] = [];
    const all = score.voices[voice];
    while (all[cursors[voice]] !== undefined && all[cursors[voice]]!.at < bar.at + bar.duration) {
      events.push(draftEvent(all[cursors[voice]]!));
      cursors[voice]++;
    }
    voices[voice] = draftVoice(bar, voice, events);
  }
  // A bar that every voice left short, against the metre, is found again by the builder from its lengths.
  const shortByDesign = bar.duration < barLength(bar.metre) && bar.misfits.length === 0;
  return {
    number: bar.number,
    metre: bar.metre,
    key: bar.key,
    ...(bar.tempo === undefined ? {} : { tempo: bar.tempo }),
    ...(shortByDesign ? { short: bar.duration } : {}),
    ...(bar.repeatStart ? { repeatStart: true } : {}),
    ...(bar.repeatEnd ? { repeatEnd: true } : {}),
    ...(bar.ending === undefined ? {} : { ending: bar.ending }),
    voices,
  };
}

/** The padding that the builder added to a voice with too few beats is taken off again, so that it stays a misfit. */
function draftVoice(bar: Bar, voice: VoiceName, events: readonly DraftEvent[]): DraftVoice {
  const misfit = bar.misfits.find((m) => m.voice === voice);
  // A gap at the end may be padding too, as in a bar that another voice has stretched; the builder pads again.
  if (misfit === undefined)
    return { events: events.at(-1)?.kind === 'gap' ? events.slice(0, -1) : events, closed: false };
  const kept = [...events];
  let surplus = events.reduce((sum, event) => sum + event.duration, 0) - misfit.written;
  const last = kept.at(-1);
  if (surplus > 0 && last?.kind === 'gap') {
    kept.pop();
    const left = last.duration - surplus;
    surplus = 0;
    if (left > 0) kept.push({ ...last, duration: left });
  }
  return { events: kept, closed: true };
}

function draftEvent(event: VoiceEvent): DraftEvent {
  const { at: _at, ...rest } = event;
  return rest;
}

/** A bar with nothing in it yet. */
export function emptyBar(metre: Metre, key: Bar['key'], short?: Ticks): DraftBar {
  return { metre, key, ...(short === undefined ? {} : { short }), voices: {} };
}
