/** A mark scheme to begin with. It is invented, no examining body's: a teacher puts the class's own in its place. */
import type { Scheme } from './scheme.ts';

export const EXAMPLE_SCHEME: Scheme = {
  name: 'Example scheme, 40 marks',
  criteria: [
    {
      id: 'chords',
      name: 'Choice of chords and cadences',
      levels: [
        {
          name: 'Beginning',
          marks: [0, 3],
          descriptor: 'Some chords fit the tune; phrases stop more than they close.',
          needs: [],
        },
        {
          name: 'Secure',
          marks: [4, 7],
          descriptor: 'Chords fit the tune; most phrases close with a cadence that suits them.',
          needs: [
            { measure: 'phrases closed', atLeast: 0.6 },
            { measure: 'different chords', atLeast: 4 },
          ],
        },
        {
          name: 'Good',
          marks: [8, 10],
          descriptor: 'A good range of chords and inversions; every phrase closes.',
          needs: [
            { measure: 'phrases closed', atLeast: 0.9 },
            { measure: 'different chords', atLeast: 6 },
            { measure: 'inverted chords', atLeast: 0.15 },
          ],
        },
        {
          name: 'Excellent',
          marks: [11, 12],
          descriptor: 'Chords chosen with imagination; cadences varied, keys visited and left with ease.',
          needs: [
            { measure: 'phrases closed', atLeast: 1 },
            { measure: 'kinds of cadence', atLeast: 2 },
            { measure: 'different chords', atLeast: 8 },
            { measure: 'inverted chords', atLeast: 0.25 },
          ],
        },
      ],
      show: [
        { measure: 'kinds of cadence' },
        { measure: 'keys visited' },
        { measure: 'seventh chords' },
        { measure: 'chromatic chords' },
      ],
    },
    {
      id: 'part-writing',
      name: 'Part-writing',
      levels: [
        {
          name: 'Beginning',
          marks: [0, 3],
          descriptor: 'Voices are written one by one and often collide.',
          needs: [],
        },
        {
          name: 'Secure',
          marks: [4, 7],
          descriptor: 'Voices can be sung; several consecutives or awkward leaps.',
          needs: [
            { measure: 'beats written', atLeast: 0.8 },
            {
              measure: 'faults a phrase',
              families: ['consecutives', 'melody', 'spacing and range'],
              atMost: 2,
            },
          ],
        },
        {
          name: 'Good',
          marks: [8, 10],
          descriptor: 'Good lines and spacing; a slip here and there.',
          needs: [
            { measure: 'beats written', atLeast: 0.95 },
            {
              measure: 'faults a phrase',
              families: ['consecutives', 'melody', 'spacing and range'],
              atMost: 0.75,
            },
          ],
        },
        {
          name: 'Excellent',
          marks: [11, 12],
          descriptor: 'Four voices that are a pleasure to sing.',
          needs: [
            { measure: 'beats written', atLeast: 1 },
            {
              measure: 'faults a phrase',
              families: ['consecutives', 'melody', 'spacing and range'],
              atMost: 0.2,
            },
          ],
        },
      ],
      show: [{ measure: 'phrases with a fault', families: ['consecutives', 'melody', 'spacing and range'] }],
    },
    {
      id: 'handling',
      name: 'Handling of chords and dissonance',
      levels: [
        {
          name: 'Beginning',
          marks: [0, 2],
          descriptor: 'Thirds are missing, leading notes doubled, sevenths left hanging.',
          needs: [],
        },
        {
          name: 'Secure',
          marks: [3, 5],
          descriptor: 'Chords are mostly complete and lead where they should.',
          needs: [{ measure: 'faults a phrase', families: ['chords', 'dissonance'], atMost: 1.5 }],
        },
        {
          name: 'Good',
          marks: [6, 8],
          descriptor: 'Chords are complete, leading notes and sevenths resolve.',
          needs: [{ measure: 'faults a phrase', families: ['chords', 'dissonance'], atMost: 0.4 }],
        },
      ],
    },
    {
      id: 'decoration',
      name: 'Non-harmony notes and rhythm',
      levels: [
        { name: 'Beginning', marks: [0, 2], descriptor: 'Block chords nearly throughout.', needs: [] },
        {
          name: 'Secure',
          marks: [3, 5],
          descriptor: 'Passing notes keep the music moving.',
          needs: [{ measure: 'non-harmony notes a phrase', atLeast: 1 }],
        },
        {
          name: 'Good',
          marks: [6, 8],
          descriptor: 'Passing notes in all voices, suspensions prepared and resolved.',
          needs: [
            { measure: 'non-harmony notes a phrase', atLeast: 2.5 },
            { measure: 'kinds of non-harmony note', atLeast: 2 },
            { measure: 'suspensions', atLeast: 1 },
            { measure: 'faults a phrase', families: ['dissonance'], atMost: 0.5 },
          ],
        },
      ],
      show: [{ measure: 'counts outside the model' }],
    },
  ],
};
