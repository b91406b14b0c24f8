/** Lets the page follow the sound: the moving line on the stave, the state of the play button, the voices' loudness. */
import { endOf, type VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import { eventAt } from '../../src/writing/write.ts';
import type { Stave } from '../panels/stave.ts';
import type { Actions } from '../state/actions.ts';
import { withholds } from '../state/brief.ts';
import { afterPaint } from '../state/frames.ts';
import type { PageState } from '../state/page.ts';
import type { Store } from '../state/store.ts';
import { createPlayer, type Player } from './player.ts';
import { startingNotes, USUAL_TEMPO } from './timeline.ts';

export interface Playback {
  playOrStop(): void;
  playVoices(voices: readonly VoiceName[], from: Ticks, until: Ticks): void;
  /** Gives the choir its notes at the caret, or at the beginning of what is chosen. */
  giveNotes(): void;
}

/** The music as it sounds: one stretch at a time, with the page following it. */
interface Sounding {
  readonly player: Player;
  readonly start: (from: Ticks, until: Ticks, loop: boolean) => void;
  readonly stop: () => void;
  /** Only these voices are heard until the music ends or the mixer is touched; undefined for the mixer's own. */
  readonly hearOnly: (voices: readonly VoiceName[] | undefined) => void;
}

const NO_SOUND = 'No sound could be made: the browser gives no access to a loudspeaker.';

export function createPlayback(
  store: Store<PageState>,
  actions: Actions,
  stave: () => Stave | undefined,
): Playback {
  const sounding = createSounding(store, actions, stave);
  const { player, start, stop, hearOnly } = sounding;
  /** Where the music last begun ends: at a change of tempo it goes on to there. */
  let until: Ticks = 0;
  followState(store, sounding, ({ history }) => until || endOf(history.now.score));
  /** Told, where the brief sets the exercise without playback. */
  const isSilent = (): boolean => {
    const silent = withholds(store.get(), 'playback');
    if (silent) actions.say('This exercise is set without playback.', 'refused');
    return silent;
  };

  return {
    playOrStop() {
      const { playing, stretch, caret, history, mixer } = store.get();
      if (isSilent()) return;
      if (playing) {
        stop();
        return;
      }
      const end = endOf(history.now.score);
      hearOnly(undefined);
      until = stretch?.until ?? end;
      start(stretch?.from ?? (caret.at >= end ? 0 : caret.at), until, mixer.loop);
    },
    giveNotes() {
      const { caret, stretch, history, playing, mixer } = store.get();
      if (isSilent()) return;
      const { score } = history.now;
      const notes = startingNotes(score, stretch?.from ?? (caret.at >= endOf(score) ? 0 : caret.at));
      if (playing) stop();
      if (notes.length === 0) {
        actions.say('There is no note to give yet.', 'refused');
        return;
      }
      player.setLoudness(mixer.volume, [], []);
      player.giveNotes(notes).catch(() => actions.say(NO_SOUND, 'failed'));
    },
    playVoices(voices, from, to) {
      if (isSilent()) return;
      player.stop();
      hearOnly(voices);
      const [begin, end] = aroundFinding(store.get().history.now.score.bars, from, to);
      until = end;
      start(begin, until, false);
    },
  };
}

function createSounding(store: Store<PageState>, actions: Actions, stave: () => Stave | undefined): Sounding {
  let only: readonly VoiceName[] | undefined;
  let lastBar = -1;
  const ended = (): void => {
    only = undefined;
    stave()?.engraving.setCursor(undefined);
    store.update((state) => ({ ...state, playing: undefined }));
  };
  const player = createPlayer(ended);
  const stop = (): void => {
    player.stop();
    ended();
  };
  /** The line on the stave goes with the sound; the page itself is told of each new bar. */
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
  return {
    player,
    stop,
    hearOnly: (voices) => {
      only = voices;
    },
    start(from, until, loop) {
      const { history, mixer } = store.get();
      const { score } = history.now;
      if (until <= from) {
        actions.say('There is nothing to hear yet.', 'refused');
        return;
      }
      player.setLoudness(mixer.volume, only ?? mixer.alone, mixer.muted);
      store.update((state) => ({ ...state, playing: { at: from, countingIn: mixer.countIn } }));
      const tempo = mixer.tempo ?? score.tempo ?? USUAL_TEMPO;
      const { countIn, metronome } = mixer;
      player.play({ score, from, until, tempo, countIn, metronome, loop }).then(follow, () => {
        stop();
        actions.say(NO_SOUND, 'failed');
      });
    },
  };
}

/** The sound follows the state: the mixer, a note just written, another piece, another tempo. */
function followState(
  store: Store<PageState>,
  { player, start, stop, hearOnly }: Sounding,
  endsAt: (state: PageState) => Ticks,
): void {
  store.subscribe((state, before) => {
    const [mixer, mixed] = [state.mixer, before.mixer];
    if (mixer.volume !== mixed.volume || mixer.alone !== mixed.alone || mixer.muted !== mixed.muted) {
      hearOnly(undefined);
      player.setLoudness(mixer.volume, mixer.alone, mixer.muted);
    }
    if (state.playing === undefined) {
      soundWritten(player, state, before);
      return;
    }
    const other =
      state.exercise.id !== before.exercise.id || state.history.now.score !== before.history.now.score;
    // The sounding music is no longer what is written: better silence than another piece.
    if (other) stop();
    else if (mixer.tempo !== mixed.tempo) start(state.playing.at, endsAt(state), mixer.loop);
  });
}

/** A note just written on the stave is sounded, where that is wanted and allowed, once it is seen. */
function soundWritten(player: Player, state: PageState, before: PageState): void {
  const byStave = state.history.last.by === 'stave' && state.history.now !== before.history.now;
  if (!byStave || !state.settings.soundNotes || withholds(state, 'playback')) return;
  if (state.history.past.length <= before.history.past.length) return;
  const event = eventAt(state.history.now.score, before.caret.voice, before.caret.at);
  const old = eventAt(before.history.now.score, before.caret.voice, before.caret.at);
  if (event?.kind === 'note' && event.pitch !== (old?.kind === 'note' ? old.pitch : undefined))
    afterPaint(() => player.sound(before.caret.voice, event.pitch).catch(() => undefined));
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
