/** What the page shows before anything has been opened. */
import { FIRST_MIXER, FIRST_SETTINGS, type PageState } from './page.ts';
import { beginHistory, workFromText } from './work.ts';

export const FIRST_STATE: PageState = {
  view: 'write',
  rule: undefined,
  side: 'marks',
  sheet: false,
  shelf: [],
  versions: [],
  exercise: { id: '', locked: [], notes: {}, brief: '', otherSeconds: 0 },
  asking: false,
  history: beginHistory(workFromText('')),
  reviewed: undefined,
  chosen: undefined,
  hints: {},
  caret: { voice: 'S', at: 0 },
  length: { numerator: 1, denominator: 1 },
  dotted: false,
  stretch: undefined,
  copied: undefined,
  settings: FIRST_SETTINGS,
  mixer: FIRST_MIXER,
  taps: [],
  playing: undefined,
  waysOut: undefined,
  precedents: undefined,
  room: undefined,
  measure: undefined,
  notice: undefined,
  kept: 'keeping',
};
