/** The parser of abcjs by itself, without its drawing and sound; it brings no types for it. Only what is used here. */
declare module 'abcjs/src/parse/abc_parse.js' {
  export interface AbcPitch {
    /** Steps above middle C as written. */
    readonly pitch: number;
    readonly accidental?: string;
    readonly startTie?: object;
    readonly endTie?: boolean;
  }

  export interface AbcSyllable {
    readonly syllable: string;
    readonly divider: string;
  }

  /** A note, rest, barline, key, metre or something else of a voice, by `el_type`. */
  export interface AbcElement {
    readonly el_type: string;
    readonly startChar?: number;
    readonly type?: string;
    /** In semibreves, without what a tuplet takes; of a tempo the lengths that make its beat. */
    readonly duration?: number | readonly number[];
    /** Beats a minute, of a tempo. */
    readonly bpm?: number;
    readonly pitches?: readonly AbcPitch[];
    readonly rest?: { readonly type: string; readonly text?: number | string };
    readonly decoration?: readonly string[];
    readonly gracenotes?: readonly AbcPitch[];
    readonly lyric?: readonly AbcSyllable[];
    readonly tripletMultiplier?: number;
    readonly startTriplet?: number;
    readonly endTriplet?: boolean;
    readonly startEnding?: string;
    readonly endEnding?: boolean;
    /** Of a metre. */
    readonly value?: readonly { readonly num: string; readonly den?: string }[];
    /** Of a key. */
    readonly accidentals?: readonly AbcAccidental[];
    readonly root?: string;
    readonly mode?: string;
  }

  export interface AbcAccidental {
    readonly acc: string;
    readonly note: string;
  }

  export interface AbcKey {
    readonly accidentals?: readonly AbcAccidental[];
    readonly root?: string;
    readonly mode?: string;
  }

  export interface AbcMetre {
    readonly type?: string;
    readonly value?: readonly { readonly num: string; readonly den?: string }[];
  }

  export interface AbcTempo {
    readonly duration?: number | readonly number[];
    readonly bpm?: number;
  }

  export interface AbcStaff {
    readonly voices: readonly (readonly AbcElement[])[];
    readonly title?: readonly string[];
    readonly clef?: { readonly type?: string };
    readonly key?: AbcKey;
    readonly meter?: AbcMetre;
  }

  export interface AbcTune {
    readonly lines: readonly { readonly staff?: readonly AbcStaff[] }[];
    readonly metaText: {
      readonly title?: unknown;
      readonly tempo?: AbcTempo;
    };
  }

  export default class Parse {
    parse(text: string, switches: object): void;
    getTune(): AbcTune;
    getWarnings(): readonly string[] | undefined;
  }
}
