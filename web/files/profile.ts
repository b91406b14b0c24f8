/** A teacher's own house profile from a JSON file. */
import { readProfile } from '../../src/profiles/read.ts';
import type { Settings } from '../state/page.ts';

/** The settings with the profile added and chosen, or every mistake in the file as sentences. */
export async function takeProfile(
  file: File,
  settings: Settings,
): Promise<Pick<Settings, 'profile' | 'ownProfiles'> | string> {
  const data = parsed(await file.text());
  if (data === undefined) return `${file.name} is not JSON, as a profile must be.`;
  const reading = readProfile(data);
  if (!reading.ok) return `${file.name}: ${reading.message.replaceAll('\n', ' ')}`;
  const { profile } = reading;
  return {
    profile: profile.name,
    ownProfiles: [...settings.ownProfiles.filter((own) => own.name !== profile.name), profile],
  };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
