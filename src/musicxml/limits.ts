/**
 * How much a file may hold. All limits of the reader stand here, each with the sentence a person reads when it is
 * passed. They are far above any exercise (the longest of the 371 chorales has under 150 bars) and low enough that the
 * worst file within them is read and reviewed in under two seconds of processor and 512 MiB; the first file of
 * a process takes up to a second more, while the engine is compiled.
 */
export const LIMITS = {
  /** Bytes of the file as it comes. */
  fileBytes: 4 * 1024 * 1024,
  /** Bytes of one unpacked entry of an archive. */
  unpackedBytes: 8 * 1024 * 1024,
  /** Unpacked bytes for one packed byte, checked once `ratioFrom` bytes are out. */
  ratio: 200,
  ratioFrom: 1024 * 1024,
  /** Entries in an archive. */
  entries: 500,
  /** Characters of an entry's name. */
  entryNameLength: 500,
  /** Elements inside one another. */
  depth: 64,
  /** Elements in all. */
  elements: 300_000,
  /** Characters of text in one element. */
  textLength: 100_000,
  parts: 64,
  /** Staves in one part. */
  staves: 16,
  /** Bars in one part. */
  bars: 1_000,
  /** Bars of all parts together, each staff counted. */
  barsInAll: 60_000,
  /** Notes and rests in all parts together. */
  notes: 30_000,
  /** Notes of the four voices that are judged. */
  voiceNotes: 3_600,
  /** Notes and rests in one bar of one part. */
  notesInBar: 1_000,
  /** Changes of key and metre, repeats, fermatas over barlines in one bar of one part. */
  changesInBar: 64,
  /** Figures in one bar of one part. */
  figuresInBar: 256,
  /** Parts of a crotchet that a file may count in. */
  divisions: 1_000_000,
  /** Crotchets a bar, and so anything in it, may last: what the longest text in our notation can hold in one bar. */
  crotchets: 600_000,
  /** Beats in a bar. */
  beats: 64,
  /** Alterations of one pitch, in semitones; beyond a double sharp or flat nothing can be judged. */
  alteration: 2,
  /** Lyric verses under one note. */
  verses: 16,
  /** Characters kept of a title or a name. */
  nameLength: 200,
} as const;
