/** Who decides: the initials that a request brings with it, where several people share a desk. */
import type { Request } from 'express';
import { INITIALS_HEADER, initialsSchema } from '../../../src/desk/wire.ts';
import { Refused } from '../../../src/refusal/refusal.ts';

/** Nothing where none are given. @throws {Refused} for what are no initials */
export function markerOf(request: Request): { readonly by?: string } {
  const header = request.get(INITIALS_HEADER);
  if (header === undefined || header === '') return {};
  const read = initialsSchema.safeParse(decoded(header));
  if (!read.success) throw new Refused(read.error.issues[0]!.message, { kind: 'unclear' });
  return { by: read.data };
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
