/** How a hymn tune is kept for the bench: a string for each voice, bars laid out by `printTune`. */
export interface HymnTune {
  readonly name: string;
  /** Key, metre, and the beats of the upbeat. */
  readonly head: string;
  /** How it is typed; otherwise its upbeat is a short bar, and its last bar as short as the notes leave it. */
  readonly typed?: 'rests' | 'filled' | 'rests and filled';
  /** In our notation without barlines; `'` stands where a line of the text ends. */
  readonly S: string;
  readonly A?: string;
  readonly T?: string;
  readonly B?: string;
}
