/** Commands that bring files in and hand them out. Readers and writers are fetched when the first of them is called. */
import type { FileCommands, Filed } from './filing.ts';

export function createFileCommands(filed: Filed, focusStave: () => void): FileCommands {
  let filing: Promise<FileCommands> | undefined;
  const there = async (): Promise<FileCommands | undefined> => {
    filing ??= import('./filing.ts').then(({ createFiling }) => createFiling(filed, focusStave));
    try {
      return await filing;
    } catch {
      filing = undefined;
      filed.actions.say('A part of the page could not be loaded. Once you are online, try again.', 'failed');
      return undefined;
    }
  };
  const whenThere = (act: (commands: FileCommands) => void): void =>
    void there().then((commands) => commands && act(commands));
  return {
    openFiles: (files) => whenThere((commands) => commands.openFiles(files)),
    openLink: async (hash) => (await there())?.openLink(hash),
    takeText: (text) => whenThere((commands) => commands.takeText(text)),
    beginTune: (tune) => whenThere((commands) => commands.beginTune(tune)),
    newExercise: (form) => whenThere((commands) => commands.newExercise(form)),
    save: (what) => whenThere((commands) => commands.save(what)),
    makeBrief: (form) => whenThere((commands) => commands.makeBrief(form)),
    setAtDesk: () => whenThere((commands) => commands.setAtDesk()),
    giveVoices: (voices) => whenThere((commands) => commands.giveVoices(voices)),
    openProfile: (file) => whenThere((commands) => commands.openProfile(file)),
  };
}
