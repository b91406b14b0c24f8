/** The house profiles on offer: those that come with the program, and a teacher's own. */
import { DEFAULT_PROFILE, PROFILES } from '../../src/profiles/list.ts';
import type { Profile } from '../../src/profiles/profile.ts';
import type { Settings } from './page.ts';

export function profilesOnOffer(settings: Settings): readonly Profile[] {
  return [...PROFILES, ...settings.ownProfiles];
}

export function chosenProfile(settings: Settings): Profile {
  return profilesOnOffer(settings).find((profile) => profile.name === settings.profile) ?? DEFAULT_PROFILE;
}
