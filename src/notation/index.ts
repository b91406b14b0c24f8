/** The compact text notation, both ways. */
export { parseKeySignature, printKeySignature } from './headers.ts';
export { printNotation } from './print.ts';
export {
  type ExtraHeader,
  NOTATION_LIMITS,
  type NotationOptions,
  type NotationReading,
  type Problem,
  readNotation,
  type Span,
} from './read.ts';
