/** The compact text notation, both ways. */
export type { Problem } from '../refusal/refusal.ts';
export { hasHeader, parseKeySignature, parseMetre, printKeySignature } from './headers.ts';
export { printNotation } from './print.ts';
export {
  type ExtraHeader,
  type NotationOptions,
  type NotationReading,
  readNotation,
  type Span,
} from './read.ts';
export { NOTATION_LIMITS } from './voice.ts';
