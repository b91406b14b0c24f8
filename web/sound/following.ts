/** Lets the page follow the sound: the moving line on the stave, the state of the play button, the voices' loudness. */
import { endOf, type VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import { eventAt } from '../../src/writing/write.ts';
import type { Stave } from '../panels/stave.ts';
import type { Actions } from '../state/actions.ts';
import { withholds } from '../state/brief.ts';
import type { PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';
import { createPlayer } from './player.ts';
import { startingNotes, USUAL_TEMPO } from './timeline.ts';

export interface Playback {
  playOrStop(): void;
  playVoices(voices: readonly VoiceName[], from: Ticks, until: Ticks): void;
  /** Gives the choir its notes at the caret, or at the beginning of what is chosen. */
  giveNotes(): void;
}

export function createPlayback(
  store: Store<PageState>,
  actions: Actions,
  stave: () => Stave | undefined,
): Playback {
  let aloneForNow: readonly VoiceName[] | undefined;
  const player = createPlayer(() => ended());

  const ended = (): void => {
    aloneForNow = undefined;
    stave()?.engraving.setCursor(undefined);
    store.update((state) => ({ ...state, playing: undefined }));
  };

  const stop = (): void => {
    player.stop();
    ended();
  };

  const start = (from: Ticks, until: Ticks, loop: boolean): void => {
    const { history, mixer } = store.get();
    const { score } = history.now;
    if (until <= from) {
      actions.say('There is nothing to hear yet.', 'refused');
      return;
    }
    player.setLoudness(mixer.volume, aloneForNow ?? mixer.alone, mixer.muted);
    store.update((state) => ({ ...state, playing: { at: from, countingIn: mixer.countIn } }));
    const tempo = mixer.tempo ?? score.tempo ?? USUAL_TEMPO;
    const { countIn, metronome } = mixer;
    player.play({ score, from, until, tempo, countIn, metronome, loop }).then(follow, () => {
      stop();
      actions.say('No sound could be made: the browser gives no access to a loudspeaker.', 'failed');
    });
  };

  let lastBar = -1;
  const follow = (): void => {
    const position = player.position();
    if (position === undefined) return;
    const drawn = stave()?.engraving;
    drawn?.setCursor(position.at);
    const bar = store.get().history.now.score.bars.findLastIndex((b) => b.at <= position.at);
    if (bar !== lastBar) {
      lastBar = bar;
      drawn?.scrollTo({ at: position.at }, true);
      store.update((state) => (state.playing ? { ...state, playing: position } : state));
    }
    requestAnimationFrame(follow);
  };

  store.subscribe((state, before) => {
    const [mixer, mixed] = [state.mixer, before.mixer];
    if (mixer.volume !== mixed.volume || mixer.alone !== mixed.alone || mixer.muted !== mixed.muted) {
      aloneForNow = undefined;
      player.setLoudness(mixer.volume, mixer.alone, mixer.muted);
    }
    if (state.playing === undefined) {
      soundWritten(state, before);
      return;
    }
    const other =
      state.exercise.id !== before.exercise.id || state.history.now.score !== before.history.now.score;
    // The sounding music is no longer what is written: better silence than another piece.
    if (other) stop();
    else if (state.mixer.tempo !== before.mixer.tempo)
      start(state.playing.at, lastEnd(state), state.mixer.loop);
  });

  const soundWritten = (state: PageState, before: PageState): void => {
    const byStave = state.history.last.by === 'stave' && state.history.now !== before.history.now;
    if (
      !byStave ||
      !state.settings.soundNotes ||
      withholds(state, 'playback') ||
      state.history.past.length <= before.history.past.length
    )
      return;
    const event = eventAt(state.history.now.score, before.caret.voice, before.caret.at);
    const old = eventAt(before.history.now.score, before.caret.voice, before.caret.at);
    if (event?.kind === 'note' && event.pitch !== (old?.kind === 'note' ? old.pitch : undefined))
      player.sound(before.caret.voice, event.pitch).catch(() => undefined);
  };

  /** Told, where the brief sets the exercise without playback. */
  const isSilent = (): boolean => {
    const silent = withholds(store.get(), 'playback');
    if (silent) actions.say('This exercise is set without playback.', 'refused');
    return silent;
  };

  let until: Ticks = 0;
  const lastEnd = (state: PageState): Ticks => until || endOf(state.history.now.score);

  return {
    playOrStop() {
      const { playing, stretch, caret, history } = store.get();
      if (isSilent()) return;
      if (playing) {
        stop();
        return;
      }
      const end = endOf(history.now.score);
      const { loop } = store.get().mixer;
      aloneForNow = undefined;
      const from = stretch?.from ?? (caret.at >= end ? 0 : caret.at);
      until = stretch?.until ?? end;
      start(from, until, loop);
    },
    giveNotes() {
      const { caret, stretch, history, playing, mixer } = store.get();
      if (isSilent()) return;
      const { score } = history.now;
      const at = stretch?.from ?? (caret.at >= endOf(score) ? 0 : caret.at);
      const notes = startingNotes(score, at);
      if (playing) stop();
      if (notes.length === 0) {
        actions.say('There is no note to give yet.', 'refused');
        return;
      }
      player.setLoudness(mixer.volume, [], []);
      player
        .giveNotes(notes)
        .catch(() =>
          actions.say('No sound could be made: the browser gives no access to a loudspeaker.', 'failed'),
        );
    },
    playVoices(voices, from, to) {
      if (isSilent()) return;
      player.stop();
      aloneForNow = voices;
      const { score } = store.get().history.now;
      const [begin, end] = aroundFinding(score.bars, from, to);
      until = end;
      start(begin, until, false);
    },
  };
}

/** A beat or two before and after what is to be heard, within its bars. */
function aroundFinding(
  bars: readonly { readonly at: Ticks; readonly duration: Ticks }[],
  from: Ticks,
  until: Ticks,
): [Ticks, Ticks] {
  const first = bars.findLast((bar) => bar.at <= from);
  const last = bars.find((bar) => bar.at + bar.duration >= until);
  return [first?.at ?? from, last ? last.at + last.duration : until];
}
