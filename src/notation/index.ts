/** The compact text notation, both ways. */
export { parseKeySignature, printKeySignature } from './headers.ts';
export { printNotation } from './print.ts';
export {
  type ExtraHeader,
  type NotationOptions,
  type NotationReading,
  type Problem,
  readNotation,
  type Span,
} from './read.ts';
export { NOTATION_LIMITS } from './voice.ts';
