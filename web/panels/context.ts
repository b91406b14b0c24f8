/** What every panel is given: the state to show, and what a person may do. Panels keep nothing of their own. */
import type { VoiceAssignment } from '../../src/musicxml/index.ts';
import type { Actions } from '../state/actions.ts';
import type { PageState } from '../state/page.ts';
import type { Shelf } from '../state/shelf.ts';
import type { Tune } from '../state/tunes.ts';

/** Commands that reach beyond the state: files, sound, paper. */
export interface Commands {
  readonly openFiles: (files: readonly File[]) => void;
  /** Opens the exercises in an address, given what stands after its `#`. */
  readonly openLink: (hash: string) => Promise<void>;
  /** Opens a text: MusicXML or our notation. */
  readonly takeText: (text: string) => void;
  /** Begins an exercise on a tune of the page's own. */
  readonly beginTune: (tune: Tune) => void;
  readonly newExercise: (form: FormData) => void;
  readonly save: (
    what: 'text' | 'musicxml' | 'annotated' | 'midi' | 'brief' | 'report' | 'everything',
  ) => void;
  /** Prints what is shown: the score with its list, or the report. */
  readonly print: () => void;
  readonly playOrStop: () => void;
  /** Hear only these voices from one moment to another. */
  readonly playVoices: (voices: readonly ('S' | 'A' | 'T' | 'B')[], from: number, until: number) => void;
  /** Gives the choir its starting notes. */
  readonly giveNotes: () => void;
  readonly makeBrief: (form: FormData) => void;
  /** Opens the desk's page for setting work with the exercise on it. */
  readonly setAtDesk: () => void;
  /** Brings a moment of the music into view. */
  readonly showPlace: (at: number) => void;
  readonly giveVoices: (voices: VoiceAssignment) => void;
  readonly findWaysOut: (finding: string) => void;
  readonly findRoom: () => void;
  /** Takes up a teacher's own profile from a file. */
  readonly openProfile: (file: File) => void;
  readonly scrollToFinding: (id: string) => void;
  readonly openFindingAtCaret: () => void;
  readonly describeCaret: () => void;
  readonly connectKeyboard: () => void;
  /** Copies what is chosen, for the page and for elsewhere. */
  readonly copyChosen: () => void;
  readonly focusStave: () => void;
}

export interface Panel {
  readonly state: PageState;
  /** The page is about to be printed. */
  readonly forPaper: boolean;
  readonly actions: Actions;
  readonly shelf: Shelf;
  readonly commands: Commands;
}
