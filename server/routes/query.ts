/** Validates what comes in an address or a body. */
import * as z from 'zod';
import { DEFAULT_PROFILE, PROFILES, profileNamed } from '../../src/profiles/list.ts';
import { unclear } from '../problem.ts';

/** The name of a profile that is built in; gives the profile. */
export const profileName = z
  .enum(PROFILES.map(({ name }) => name))
  .default(DEFAULT_PROFILE.name)
  .transform((name) => profileNamed(name) ?? DEFAULT_PROFILE);

/** What the schema makes of the value, or a 400 naming every part that does not fit. */
export function parseQuery<S extends z.ZodType>(schema: S, value: unknown): z.output<S> {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  throw unclear(parsed.error);
}
