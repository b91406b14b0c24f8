/** The one thing from outside the language that the engine uses; Node and every browser have it. */
declare class TextDecoder {
  constructor(label?: string, options?: { readonly fatal?: boolean; readonly ignoreBOM?: boolean });
  readonly encoding: string;
  decode(input: Uint8Array, options?: { readonly stream?: boolean }): string;
}
declare class TextEncoder {
  encode(input: string): Uint8Array;
}
